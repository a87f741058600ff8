import fileSaver from 'file-saver';

/** A file's name, and what is to be written into it. */
export interface TextFile {
  readonly name: string;
  readonly text: string;
}

/** Hands a file to the browser to be saved. */
export const saveBlob = (parts: BlobPart[], type: string, name: string): void =>
  fileSaver.saveAs(new Blob(parts, { type }), name);

export const saveText = (text: string, type: string, name: string): void =>
  saveBlob([text], `${type};charset=utf-8`, name);
