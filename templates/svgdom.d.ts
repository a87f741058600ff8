/** The part of svgdom that is used here; the package brings no types of its own. */
declare module 'svgdom' {
  export function createSVGWindow(): Window;
}
