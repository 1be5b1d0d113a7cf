/** When an instalment falls due: on acceptance, or whole days before the event (0 on the day, negative after). */
export type InstalmentDue = 'accepted' | number;

/** One instalment of a payment schedule, plain JSON: a share of the total, a fixed sum, or what is left. */
export type Instalment =
  | { readonly of: 'rate'; readonly rate: string; readonly due: InstalmentDue }
  | { readonly of: 'amount'; readonly amount: string; readonly due: InstalmentDue }
  | { readonly of: 'balance'; readonly due: InstalmentDue };
