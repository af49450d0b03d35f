#pragma once

#include "core/numbers/admission.h"
#include "core/numbers/grading.h"

#include <string>

// The names that the files of tests/data/method use.
namespace rig::tests {

inline std::string nameOf(numbers::ReadingsStatus status)
{
    using numbers::ReadingsStatus;
    switch (status) {
    case ReadingsStatus::Ok:
        return "OK";
    case ReadingsStatus::NoReadings:
        return "NO_READINGS";
    case ReadingsStatus::NotANumber:
        return "NOT_A_NUMBER";
    case ReadingsStatus::ReversedBounds:
        return "REVERSED_BOUNDS";
    case ReadingsStatus::NoLowerBound:
        return "NO_LOWER_BOUND";
    case ReadingsStatus::NoUpperBound:
        return "NO_UPPER_BOUND";
    }
    return "";
}

inline std::string nameOf(numbers::Place place)
{
    using numbers::Place;
    switch (place) {
    case Place::OutsideLow:
        return "OUTSIDE_LOW";
    case Place::StraddlesLow:
        return "STRADDLES_LOW";
    case Place::Inside:
        return "INSIDE";
    case Place::Covers:
        return "COVERS";
    case Place::StraddlesHigh:
        return "STRADDLES_HIGH";
    case Place::OutsideHigh:
        return "OUTSIDE_HIGH";
    }
    return "";
}

inline std::string nameOf(numbers::Grade grade)
{
    using numbers::Grade;
    switch (grade) {
    case Grade::Outside:
        return "OUTSIDE";
    case Grade::Watch:
        return "WATCH";
    case Grade::Unresolved:
        return "UNRESOLVED";
    case Grade::Normal:
        return "NORMAL";
    }
    return "";
}

inline std::string nameOf(numbers::AdmissionFlag flag)
{
    using numbers::AdmissionFlag;
    switch (flag) {
    case AdmissionFlag::None:
        return "NONE";
    case AdmissionFlag::Straggler:
        return "STRAGGLER";
    case AdmissionFlag::Outlier:
        return "OUTLIER";
    case AdmissionFlag::NotTestable:
        return "NOT_TESTABLE";
    }
    return "";
}

} // namespace rig::tests
