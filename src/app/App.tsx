import { parts } from './parts.ts';
import { Room } from './Room.tsx';

/** The whole bench with all its parts. */
export const App = () => <Room parts={parts} />;
