import { startProposalPage } from './page-script.ts';

startProposalPage();
