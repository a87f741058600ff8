import type { Settled } from '../../geometry/settle.ts';
import { endProfilePiece } from './end-profile.ts';
import { footprint } from './footprint.ts';
import type { Piece } from './piece.ts';
import { plateCapPiece } from './plate-cap.ts';
import { saddle } from './saddle.ts';
import { saddleCrown } from './saddle-crown.ts';

/** Every template, in bench order. A new one is a file beside this one and a line here. */
export const pieces: readonly Piece[] = [footprint, endProfilePiece, plateCapPiece, saddle, saddleCrown];

/** The templates that a job has, in bench order. */
export const piecesOf = (job: Settled): readonly Piece[] => pieces.filter(({ applies }) => applies?.(job) ?? true);
