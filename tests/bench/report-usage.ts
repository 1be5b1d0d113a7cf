import { writeFileSync } from 'node:fs';

// Loaded before a measured script: leaves the most memory that its process held, in kilobytes, and the processor time of
// all its threads, in microseconds, where it was told.
const { BENCH_USAGE_FILE } = process.env;
delete process.env.BENCH_USAGE_FILE;
if (BENCH_USAGE_FILE)
  process.on('exit', () => {
    const { maxRSS, userCPUTime, systemCPUTime } = process.resourceUsage();
    writeFileSync(BENCH_USAGE_FILE, JSON.stringify([maxRSS, userCPUTime + systemCPUTime]));
  });
