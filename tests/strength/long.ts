/** Whether the strength tests run in full, as `npm run test:long` does; else at a size that every run can bear. */
export const LONG = process.env.SALVER_LONG === 'yes';
