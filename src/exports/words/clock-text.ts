/** Minutes from a midnight as a time of day by 24 hours: 1095 → `18:15`, -30 → `23:30`. */
export function clockText(minute: number): string {
  const ofDay = ((minute % 1440) + 1440) % 1440;
  return `${pad(Math.floor(ofDay / 60))}:${pad(ofDay % 60)}`;
}

/** Minutes from the beginning of a day's work whose hour nobody has said: 95 → `+1:35`. */
export function afterText(minute: number): string {
  return `+${Math.floor(minute / 60)}:${pad(minute % 60)}`;
}

function pad(number: number): string {
  return String(number).padStart(2, '0');
}
