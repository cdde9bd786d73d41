import { type DayRoute, type PlannedStop, type RouteDayQuestion, type RouteStop, type RouteTotals } from "#domain/routing/day-route";
import { type TravelMatrix, travelMeters, travelSeconds } from "#domain/routing/travel-time";

/**
 * Works an answer out again from the question and the matrix alone, sharing nothing with the search, and says in
 * sentences what is wrong with it: a stop lost, doubled or unknown, a time or a sum that doesn't hold, a window broken,
 * a pinned stop elsewhere, a day longer than it may be. An empty list means that the answer holds.
 */
export function checkDayRoute(question: RouteDayQuestion, travel: TravelMatrix, route: DayRoute): readonly string[] {
  return [...complaintsOfStops(question, route), ...complaintsOfTimes(question, travel, route)];
}

function complaintsOfStops({ stops }: RouteDayQuestion, route: DayRoute): string[] {
  const answered = [...route.stops, ...route.leftOut].map(({ stopId }) => stopId);
  const complaints: string[] = [];
  for (const { stopId } of stops) {
    const times = answered.filter((answer) => answer === stopId).length;
    if (times !== 1) complaints.push(`The stop ${stopId} is in the answer ${times} times.`);
  }
  for (const stopId of answered) {
    if (!stops.some((stop) => stop.stopId === stopId)) complaints.push(`The stop ${stopId} is not in the question.`);
  }
  return complaints;
}

function complaintsOfTimes(question: RouteDayQuestion, travel: TravelMatrix, route: DayRoute): string[] {
  const complaints: string[] = [];
  const expect = (what: string, said: number, found: number) => {
    if (said !== found) complaints.push(`${what} is given as ${said} and is ${found}.`);
  };
  let place = question.startPlaceIndex;
  let clock = question.dayStartSeconds;
  const sums = { servedWeight: 0, driveSeconds: 0, driveMeters: 0, waitSeconds: 0, serviceSeconds: 0 };
  for (const [index, planned] of route.stops.entries()) {
    const stop = question.stops.find(({ stopId }) => stopId === planned.stopId);
    if (stop === undefined) continue;
    const of = (what: string) => `The ${what} of the stop ${planned.stopId}`;
    expect(of("position"), planned.position, index + 1);
    if (stop.pinnedPosition !== undefined) expect(of("pinned position"), stop.pinnedPosition, index + 1);
    expect(of("drive in seconds"), planned.driveSeconds, travelSeconds(travel, place, stop.placeIndex));
    expect(of("drive in meters"), planned.driveMeters, travelMeters(travel, place, stop.placeIndex));
    expect(of("arrival"), planned.arrivalSeconds, clock + travelSeconds(travel, place, stop.placeIndex));
    expect(of("start"), planned.startSeconds, planned.arrivalSeconds + planned.waitSeconds);
    expect(of("departure"), planned.departureSeconds, planned.startSeconds + stop.serviceMinutes * 60);
    complaints.push(...complaintsOfStart(stop, planned));
    place = stop.placeIndex;
    clock = planned.departureSeconds;
    sums.servedWeight += stop.dueWeight;
    sums.driveSeconds += travelSeconds(travel, placeBefore(question, route, index), place);
    sums.driveMeters += travelMeters(travel, placeBefore(question, route, index), place);
    sums.waitSeconds += planned.waitSeconds;
    sums.serviceSeconds += stop.serviceMinutes * 60;
  }
  const leaves = route.stops.length > 0;
  const homeSeconds = leaves ? travelSeconds(travel, place, question.endPlaceIndex) : 0;
  const homeMeters = leaves ? travelMeters(travel, place, question.endPlaceIndex) : 0;
  expect("The way home in seconds", route.homeDriveSeconds, homeSeconds);
  expect("The way home in meters", route.homeDriveMeters, homeMeters);
  expect("The return", route.returnSeconds, clock + homeSeconds);
  const overtimeSeconds = Math.max(0, clock + homeSeconds - question.dayEndSeconds);
  if (overtimeSeconds > question.longestOvertimeSeconds) complaints.push(`The day runs over by ${overtimeSeconds} seconds.`);
  const totals: RouteTotals = {
    ...sums,
    driveSeconds: sums.driveSeconds + homeSeconds,
    driveMeters: sums.driveMeters + homeMeters,
    overtimeSeconds,
  };
  for (const name of Object.keys(totals) as (keyof RouteTotals)[]) expect(`The sum ${name}`, route.totals[name], totals[name]);
  return complaints;
}

function placeBefore(question: RouteDayQuestion, route: DayRoute, index: number): number {
  const before = route.stops[index - 1]?.stopId;
  return question.stops.find(({ stopId }) => stopId === before)?.placeIndex ?? question.startPlaceIndex;
}

function complaintsOfStart(stop: RouteStop, { arrivalSeconds, startSeconds, waitSeconds }: PlannedStop): string[] {
  const complaints: string[] = [];
  const isWithin = (seconds: number) =>
    stop.windows.length === 0 || stop.windows.some(({ fromMinute, toMinute }) => fromMinute * 60 <= seconds && seconds <= toMinute * 60);
  if (!isWithin(startSeconds)) complaints.push(`Work at the stop ${stop.stopId} begins outside its windows.`);
  if (waitSeconds < 0) complaints.push(`Work at the stop ${stop.stopId} begins before the crew is there.`);
  const opensEarlier = stop.windows.some(({ fromMinute }) => arrivalSeconds <= fromMinute * 60 && fromMinute * 60 < startSeconds);
  const waitsInVain = waitSeconds > 0 && (isWithin(arrivalSeconds) || opensEarlier);
  if (waitsInVain) complaints.push(`The crew waits at the stop ${stop.stopId} while it could work.`);
  return complaints;
}
