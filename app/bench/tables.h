#pragma once

namespace rig::bench {

// Each prints its tables to standard output, in the form docs/method.md keeps them.

// Content and width of bands, and the grades of good couplings, over `baselines` invented ones a row.
void printCoverage(int baselines);
// False alarms and finds of the drift flag over `baselines` invented ones a row.
void printRunChart(int baselines);
// What is told of `seasons` invented seasons a row, beside the goals of docs/method.md M. Whether every goal
// is met.
bool printSeasons(int seasons);
// Median times beside their goals; processor time of this process, so that a busy machine tells little lies.
void printTimes();
// Times of laying out and painting long histories. Whether the goal is met.
bool printPictureTimes(int argc, char** argv);
// Times of the window on files that it makes itself, a few seconds' worth of them when `small`. Whether every
// goal is met.
bool printPageTimes(int argc, char** argv, bool small);

} // namespace rig::bench
