export * from './arc.ts';
export * from './path.ts';
export * from './point.ts';
export * from './sagitta.ts';
export * from './transform.ts';
export type * from './types.ts';
