import type { Built } from '../../store.ts';
import type { GaugeChosen } from './gauge.ts';
import type { Ruled } from './ruled.ts';

export type Tool = 'ruler' | 'gauge';

/** The tool in hand and how each is set: what is looked at, not what the job is, so that nothing of it is a step to take back. */
export interface ToolState {
  readonly tool: Tool | undefined;
  readonly ruled: Ruled;
  /** The gauge that is laid; at first the job's nearest on the crown. */
  readonly gauge: GaugeChosen | undefined;
}

export interface Tools extends ToolState {
  readonly onChange: (change: Partial<ToolState>) => void;
}

export const noTools: ToolState = { tool: undefined, ruled: { of: undefined }, gauge: undefined };

/** What was measured of this design; nothing, once its numbers are others. */
export const ofDesign = (ruled: Ruled, built: Built): Ruled => (ruled.of === built ? ruled : { of: built });
