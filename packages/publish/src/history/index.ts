export { historySvg, historyWords, type HistoryChartOptions } from './history-chart.js';
export { historyPage, type HistoryPageOptions } from './history-page.js';
export {
  historyCsv,
  historyJson,
  historyMarkdown,
  historyText,
  HISTORY_JSON_VERSION,
  type HistoryTextOptions,
} from './history-table.js';
