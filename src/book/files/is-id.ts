/** Words of a–z and 0–9 joined by single hyphens, at most 60 characters: what names a file also stands in an address. */
export function isId(text: string): boolean {
  return text.length <= 60 && /^[a-z0-9]+(?:-[a-z0-9]+)*$/.test(text);
}

/**
 * Whether Windows keeps the name for a device, so that no file of it can be made or copied there, whatever its ending
 * (Microsoft, "Naming Files, Paths, and Namespaces"; from memory).
 */
export function isReservedName(id: string): boolean {
  return /^(?:con|prn|aux|nul|com[0-9]|lpt[0-9])$/i.test(id);
}
