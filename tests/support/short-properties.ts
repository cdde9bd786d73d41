import fc from "fast-check";

// For mutation testing only: a property that has found nothing in this time finds nothing. Each change is looked at by
// every test that runs through it, and a property with all its runs would take minutes for those that live.
// eslint-disable-next-line @typescript-eslint/no-deprecated -- the plugin that takes its place can't be set for all properties
fc.configureGlobal({ interruptAfterTimeLimit: 2500, markInterruptAsFailure: false });
