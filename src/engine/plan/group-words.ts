/** What whys call the people of each group. */
export const GROUP_WORDS = {
  adults: 'why.adults',
  children: 'why.children',
  vendors: 'why.vendors',
  staff: 'why.staff',
} as const;
