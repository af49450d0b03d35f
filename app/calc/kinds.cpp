#include "app/calc/kinds.h"

#include <array>

namespace rig::calc {

std::span<const Kind> kinds()
{
    static constexpr std::array kTable{
        Kind{"arl", answerArl},
        Kind{"band", answerBand},
        Kind{"changepoint", answerChangePoint},
        Kind{"discrimination", answerDiscrimination},
        Kind{"drift", answerDrift},
        Kind{"empirical_bayes_interval", answerEmpiricalBayesInterval},
        Kind{"empirical_bayes_moments", answerEmpiricalBayesMoments},
        Kind{"mann_kendall_theil_sen", answerMannKendallTheilSen},
        Kind{"shared_shift", answerSharedShift},
        Kind{"trend", answerTrend},
    };
    return kTable;
}

} // namespace rig::calc
