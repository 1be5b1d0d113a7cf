/** How a menu is served. */
export const SERVICE_STYLES = ['plated', 'buffet', 'family style', 'stations'] as const;

/** One way of serving. */
export type ServiceStyle = (typeof SERVICE_STYLES)[number];
