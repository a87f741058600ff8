/** The part of the File System Access API that is used here. */
interface Directory {
  readonly name: string;
  getFileHandle(name: string, options: { readonly create: true }): Promise<{ createWritable(): Promise<Writable> }>;
}
interface Writable {
  write(text: string): Promise<void>;
  close(): Promise<void>;
}
type Picker = (options: { readonly mode: 'readwrite' }) => Promise<Directory>;

const picker = (): Picker | undefined => (window as { showDirectoryPicker?: Picker }).showDirectoryPicker;

/** Whether this browser lets a page write into a folder that the person chooses. */
export const hasFolders = (): boolean => picker() !== undefined;

/** A folder that the person chose, and what writes a file into it. */
export interface Folder {
  readonly name: string;
  readonly write: (file: string, text: string) => Promise<void>;
}

/** Lets the person choose a folder; undefined where they choose none. Rejects with what the browser rejects with. */
export const chooseFolder = async (): Promise<Folder | undefined> => {
  const pick = picker();
  if (pick === undefined) return undefined;
  try {
    const folder = await pick.call(window, { mode: 'readwrite' });
    return {
      name: folder.name,
      write: async (name, text) => {
        const file = await (await folder.getFileHandle(name, { create: true })).createWritable();
        await file.write(text);
        await file.close();
      },
    };
  } catch (error) {
    if (error instanceof DOMException && error.name === 'AbortError') return undefined;
    throw error;
  }
};
