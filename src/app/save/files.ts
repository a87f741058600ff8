import fileSaver from 'file-saver';

/** Hands a file to the browser to be saved. */
export const saveBlob = (parts: BlobPart[], type: string, name: string): void =>
  fileSaver.saveAs(new Blob(parts, { type }), name);

export const saveText = (text: string, type: string, name: string): void =>
  saveBlob([text], `${type};charset=utf-8`, name);
