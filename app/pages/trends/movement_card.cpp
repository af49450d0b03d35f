#include "app/pages/trends/movement_card.h"

#include "app/widgets/parts.h"
#include "app/wording/cause_words.h"
#include "app/wording/review_words.h"
#include "app/wording/trends_page_words.h"

#include <QLabel>
#include <QStringList>
#include <QStyle>
#include <QVBoxLayout>

#include <algorithm>

namespace rig {

namespace {

bool isOfMovement(Sign sign)
{
    switch (sign) {
    case Sign::Drift:
    case Sign::Step:
    case Sign::StepOrDrift:
    case Sign::ScatterGrew:
    case Sign::DriftEnded:
    case Sign::ScatterShrank:
        return true;
    case Sign::FactsInDoubt:
    case Sign::OpenQuestion:
    case Sign::Outside:
    case Sign::OutsideBefore:
    case Sign::NearEdge:
    case Sign::GapIsNoWitness:
    case Sign::OutsideExplained:
    case Sign::NotRead:
    case Sign::NoBand:
    case Sign::MissedRiggings:
    case Sign::ThinBand:
    case Sign::PartSeatedNeverShown:
        break;
    }
    return false;
}

// What moved, gravest first; with nothing of that, that the numbers show none.
QString movementTitle(const CouplingReview& coupling)
{
    QStringList moved;
    for (const Sign sign : coupling.signs)
        if (isOfMovement(sign))
            moved << ReviewWords::sign(sign, coupling);
    if (!moved.isEmpty())
        return TrendsPageWords::moved(moved);
    if (const DriftFlag* flag = coupling.movement ? coupling.movement->raised() : nullptr)
        return ReviewWords::earlySign(*flag);
    return coupling.movement && coupling.movement->path
               ? TrendsPageWords::noMovementShown(static_cast<int>(coupling.movement->readings.size()))
               : TrendsPageWords::movementNotKnown();
}

} // namespace

MovementCard::MovementCard(QWidget* parent) : QFrame{parent}
{
    setObjectName("movementCard");
    auto* layout = new QVBoxLayout{this};
    layout->setContentsMargins(16, 8, 16, 8);
    layout->setSpacing(2);
    m_title = labelOf({}, "verdict", "movementTitle");
    m_figures = labelOf({}, "body", "movementFigures");
    m_lookAt = labelOf({}, "body", "movementLookAt");
    layout->addWidget(m_title);
    layout->addWidget(m_figures);
    layout->addWidget(m_lookAt);
}

void MovementCard::display(const CouplingReview& coupling, const AirframeReview& review)
{
    m_title->setText(movementTitle(coupling));
    QStringList figures;
    const bool stands = std::ranges::any_of(coupling.signs, isOfMovement);
    figures << ReviewWords::movementSentence(coupling) << ReviewWords::excursionSentence(coupling)
            << ReviewWords::forecastSentence(coupling);
    if (coupling.has(Sign::ScatterGrew) || coupling.has(Sign::ScatterShrank))
        figures << ReviewWords::scatterSentence(coupling);
    figures.removeAll(QString{});
    sayIn(m_figures, figures.join(QLatin1Char(' ')));

    QStringList lookAt;
    for (const CauseText& cause : CauseWords::of(coupling, review))
        lookAt << CauseWords::sentence(cause);
    if (!lookAt.isEmpty())
        lookAt << CauseWords::cannotTellWhich();
    sayIn(m_lookAt, lookAt.join(QLatin1Char('\n')));

    const char* rank = "unknown";
    if (stands)
        rank = "near";
    else if (coupling.movement && coupling.movement->path)
        rank = "still"; // no frame
    for (QWidget* widget : std::initializer_list<QWidget*>{this, m_title}) {
        widget->setProperty("verdict", rank);
        widget->style()->unpolish(widget);
        widget->style()->polish(widget);
    }
    setAccessibleName(m_title->text());
    setAccessibleDescription(m_figures->text() + QLatin1Char(' ') + m_lookAt->text());
}

} // namespace rig
