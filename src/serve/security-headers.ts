/**
 * What every answer carries, on both ports. The pages' own policy on scripts and styles stands in each page; here is
 * what only a header can say. Nothing is framed, indexed, sniffed at or told to other sites.
 */
export const SECURITY_HEADERS: Readonly<Record<string, string>> = {
  'content-security-policy': "frame-ancestors 'none'",
  'referrer-policy': 'no-referrer',
  'x-content-type-options': 'nosniff',
  'x-robots-tag': 'noindex, nofollow',
  'permissions-policy':
    'camera=(), display-capture=(), geolocation=(), microphone=(), payment=(), usb=(), browsing-topics=()',
  'cross-origin-opener-policy': 'same-origin',
  'cross-origin-resource-policy': 'same-origin',
};
