/** The ports that pages are shown at where no flag names others: numbers that no common server takes. */
export const PUBLIC_PORT = '7480';
export const PRIVATE_PORT = '7481';
