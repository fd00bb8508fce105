export { tally, tallyText, tellDiagnostics, type Found, type Position, type Tally } from './found.js';
export { reportText, type ReportTextOptions } from './report-text.js';
export { reportGithub } from './report-github.js';
export { checkReport, mergeReports, reportJson, type CheckReport } from './report-json.js';
export { reportSarif } from './report-sarif.js';
export { isFound, readCheckReport } from './read-report.js';
