import { startProposalPage } from './proposal-page.ts';

startProposalPage();
