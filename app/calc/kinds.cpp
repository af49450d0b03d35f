#include "app/calc/kinds.h"

#include <array>

namespace rig::calc {

std::span<const Kind> kinds()
{
    static constexpr std::array kTable{
        Kind{"anova", answerAnova},
        Kind{"anova_rr", answerMeasurerStudy},
        Kind{"arl", answerArl},
        Kind{"band", answerBand},
        Kind{"budget", answerBudget},
        Kind{"changepoint", answerChangePoint},
        Kind{"describe", answerDescribe},
        Kind{"discrimination", answerDiscrimination},
        Kind{"drift", answerDrift},
        Kind{"empirical_bayes_interval", answerEmpiricalBayesInterval},
        Kind{"empirical_bayes_moments", answerEmpiricalBayesMoments},
        Kind{"line", answerLine},
        Kind{"mann_kendall_theil_sen", answerMannKendallTheilSen},
        Kind{"mixed_model", answerMixedModel},
        Kind{"movement", answerMovement},
        Kind{"repeat_pair", answerRepeatPair},
        Kind{"season", answerSeason},
        Kind{"shared_shift", answerSharedShift},
        Kind{"trend", answerTrend},
    };
    return kTable;
}

} // namespace rig::calc
