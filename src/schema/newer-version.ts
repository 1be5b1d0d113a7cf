/** The version of every JSON file that Salver writes and reads. */
export const READ_VERSION = 1;

/** What is to be done with a record of a later version. */
export const USE_NEWER = 'use the newer Salver that wrote it; this one leaves the file unchanged';

/** The version of a record that a later Salver wrote; undefined for any other record, right or wrong. */
export function versionAbove(record: unknown): number | undefined {
  if (typeof record !== 'object' || record === null || !('version' in record)) return undefined;
  const { version } = record;
  return typeof version === 'number' && Number.isInteger(version) && version > READ_VERSION
    ? version
    : undefined;
}

/** The refusal of a record that a later Salver wrote; undefined for any other, right or wrong. */
export function newerVersion(record: unknown): string | undefined {
  const version = versionAbove(record);
  if (version === undefined) return undefined;
  return `the file is version ${version}, but this Salver reads version ${READ_VERSION}`;
}
