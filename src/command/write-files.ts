import { mkdir, rename, rm, stat, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';

/** A file to write: its path within the folder, with forward slashes, and what is in it. */
export interface NamedFile {
  readonly name: string;
  readonly content: string | Uint8Array;
}

/**
 * Writes files into a folder, which is made if need be. Each is written beside its place first and moved there only once all of them
 * are on the disk, so a file that was there before is replaced whole or not at all. Throws what the file system throws.
 */
export async function writeFiles(folder: string, files: readonly NamedFile[]): Promise<void> {
  const steps = files.map(({ name, content }) => {
    const path = join(folder, name);
    return { path, beside: `${path}.${process.pid}.tmp`, content };
  });
  try {
    for (const { path, beside, content } of steps) {
      await makeFolder(dirname(path));
      await mustNotBeFolder(path);
      await writeFile(beside, content);
    }
    for (const { path, beside } of steps) await rename(beside, path);
  } catch (error) {
    await Promise.all(steps.map(({ beside }) => rm(beside, { force: true }).catch(() => {})));
    throw error;
  }
}

/** A folder with all that it stands in. (Node's own `recursive` never comes back from places like /proc, where none can be made.) */
async function makeFolder(folder: string): Promise<void> {
  try {
    await mkdir(folder);
  } catch (error) {
    if (codeOf(error) === 'EEXIST' && (await stat(folder)).isDirectory()) return;
    if (codeOf(error) !== 'ENOENT' || dirname(folder) === folder) throw error;
    await makeFolder(dirname(folder));
    await mkdir(folder);
  }
}

/** A folder in a file's place would be noticed only after others had been replaced. */
async function mustNotBeFolder(path: string): Promise<void> {
  const there = await stat(path).catch(() => undefined);
  if (there?.isDirectory()) throw Object.assign(new Error(`EISDIR: is a folder, '${path}'`), { code: 'EISDIR', path });
}

const reasons: Readonly<Record<string, string>> = {
  EEXIST: 'a file stands where a folder is needed',
  ENOTDIR: 'a file stands where a folder is needed',
  EISDIR: 'a folder stands where a file is needed',
  EACCES: 'it may not be written by you',
  EPERM: 'it may not be written by you',
  EROFS: 'its disk can only be read',
  ENOSPC: 'its disk is full',
  ENOENT: 'there is no such file or folder',
};

/** Why a file or folder cannot be read or written, in words. */
export function reasonFor(error: unknown): string {
  return reasons[codeOf(error)] ?? (error instanceof Error ? error.message : String(error));
}

const codeOf = (error: unknown): string => (error instanceof Error && 'code' in error ? String(error.code) : '');
