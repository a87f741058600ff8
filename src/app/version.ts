import packageFile from '../../package.json?raw';

/** The program's version, as it stands on every sheet. */
export const version: string = JSON.parse(packageFile).version;
