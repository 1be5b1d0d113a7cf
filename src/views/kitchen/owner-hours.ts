/** One role's hours at an event, of all its people together. */
export interface HoursRowView {
  readonly role: string;
  /** `6 × 9 h 25 min, 15:40 to 01:05; sold 5 h each`; empty for all roles together. */
  readonly why: string;
  readonly sold: string;
  readonly needed: string;
  readonly missing: string;
  /** What the missing hours are paid. */
  readonly cost: string;
}

/** Hours sold beside hours worked, by role and in all. */
export interface OwnerHoursView {
  readonly rows: readonly HoursRowView[];
  readonly all: HoursRowView;
}
