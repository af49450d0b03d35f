#include "app/pages/setup/setup_panel.h"

#include "app/widgets/parts.h"
#include "app/wording/formats.h"
#include "app/wording/problem_words.h"
#include "app/wording/setup_words.h"

#include <QVBoxLayout>

#include <cmath>

namespace rig {

SetUpPanel::SetUpPanel(SetUpPresenter& presenter, const PartText& part) : m_presenter{presenter}
{
    m_body = new QVBoxLayout{this};
    m_body->setContentsMargins(28, 20, 28, 20);
    m_body->setSpacing(12);
    m_body->addWidget(labelOf(part.title, "title"));
    m_body->addWidget(labelOf(part.why, "", "why"));
}

void SetUpPanel::setLook(const Look& look)
{
    // A line longer than this is tiring to read; on a wide screen the rest stays empty.
    constexpr double kWidest = 960;
    setMaximumWidth(static_cast<int>(std::lround(kWidest * look.fonts.scale)));
}

bool SetUpPanel::report(const Outcome& outcome)
{
    if (!outcome)
        emit problemArose(ProblemWords::sentence(outcome.problem(), {}));
    else
        emit changed();
    return static_cast<bool>(outcome);
}

bool SetUpPanel::report(const Result<Saved>& result)
{
    if (!result) {
        emit problemArose(ProblemWords::sentence(result.problem(), {}));
        return false;
    }
    if (!result.value().isSaved())
        return false;
    emit changed();
    return true;
}

QString SetUpPanel::savedNow() const
{
    return SetUpWords::savedAt(Formats{}.time(m_presenter.desk.now()));
}

} // namespace rig
