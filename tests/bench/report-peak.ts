import { writeFileSync } from 'node:fs';

// Loaded before a measured script: leaves the most memory that its process held, in kilobytes, where it was told.
const { BENCH_PEAK_FILE } = process.env;
delete process.env.BENCH_PEAK_FILE;
if (BENCH_PEAK_FILE)
  process.on('exit', () => writeFileSync(BENCH_PEAK_FILE, String(process.resourceUsage().maxRSS)));
