/// <reference path="./svgdom.d.ts" />
import { createSVGWindow } from 'svgdom';

/** A DOM to write SVG with where there is none, as in Node; a browser gives its own window instead. */
export const svgWindow = (): Window => createSVGWindow();
