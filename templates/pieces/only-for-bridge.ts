import type { Settled } from '../../geometry/settle.ts';

/** Why a job on the saddle alone has no template by which a bridge is made or glued. */
export const onlyForBridge = ({ work }: Settled): string | undefined =>
  work === 'bridge' ? undefined : 'The work is on the saddle alone: the bridge stays as it is.';
