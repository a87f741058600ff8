/** The package's main file gives Node's modules nothing by name; this one does. Its types are the package's own. */
declare module 'maxrects-packer/dist/maxrects-packer.mjs' {
  export { MaxRectsPacker } from 'maxrects-packer';
}
