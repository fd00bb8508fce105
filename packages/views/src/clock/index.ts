/** The clock: when to start, what to do when, and when it is at its best. */
export * from './problem.js';
export { buildNetwork, type Aim, type Network } from './network.js';
export { search, type Budget, type Found as FoundPlan, type SearchResult } from './search.js';
export { gather, type Gathered } from './gather.js';
export { plainCalendar, calendarSlip, hourText, sleepAfter, type ClockCalendar, type LocalTime } from './calendar.js';
export { awakeHours, planKitchen, USUAL_AWAKE, type AwakeHours } from './clock-kitchen.js';
export { partsOf, MOST_ACTIVITIES, MOST_VISITS, type DishRequest, type PlannedParts } from './from-formula.js';
export { solve, searchFor, type Quality, type Solution, type Solved } from './solve.js';
export { clockProblem, planClock, USUAL_BUDGET, type ClockOptions, type ClockRequest } from './plan-clock.js';
export { checkClock, formulasRequest, menuRequest } from './requests.js';
export { heatingTime, turnDial } from './jobs.js';
export { Tension } from './tension.js';
export { stepName, lasting, allowed, moment } from './words.js';
export * from './clock-plan.js';
export * from './timetable.js';
