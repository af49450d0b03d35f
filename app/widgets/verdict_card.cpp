#include "app/widgets/verdict_card.h"

#include "app/widgets/mark_widget.h"
#include "app/wording/standing_words.h"
#include "app/wording/verdict_words.h"

#include <QGridLayout>
#include <QLabel>
#include <QStyle>

namespace rig {

const char* rankOf(Says says)
{
    switch (says) {
    case Says::Inside:
        return "inside";
    case Says::NearEdge:
    case Says::Moved:
    case Says::Scatters:
    case Says::WasOutside:
    case Says::Asked:
    case Says::PartSeated:
        return "near";
    case Says::Outside:
        return "outside";
    case Says::CannotTell:
    case Says::NoBandYet:
    case Says::NotRead:
        break;
    }
    return "unknown";
}

VerdictCard::VerdictCard(QWidget* parent) : QFrame{parent}
{
    setObjectName("verdictCard");
    auto* layout = new QGridLayout{this};
    layout->setContentsMargins(16, 10, 16, 10);
    layout->setHorizontalSpacing(14);
    layout->setVerticalSpacing(2);
    m_mark = new MarkWidget;
    m_word = new QLabel;
    m_word->setProperty("kind", "verdict");
    m_word->setObjectName("verdictWord");
    m_explanation = new QLabel;
    m_explanation->setWordWrap(true);
    m_explanation->setObjectName("verdictExplanation");
    m_caution = new QLabel;
    m_caution->setWordWrap(true);
    m_caution->setObjectName("verdictCaution");
    m_movement = new QLabel;
    m_movement->setWordWrap(true);
    m_movement->setObjectName("verdictMovement");
    m_movement->setProperty("kind", "caution");
    m_movement->hide();
    m_kept = new QLabel;
    m_kept->setProperty("kind", "soft");
    m_kept->setObjectName("verdictKept");
    layout->addWidget(m_mark, 0, 0, 2, 1, Qt::AlignTop);
    layout->addWidget(m_word, 0, 1);
    layout->addWidget(m_kept, 0, 2, Qt::AlignRight);
    layout->addWidget(m_explanation, 1, 1, 1, 2);
    layout->addWidget(m_movement, 2, 1, 1, 2);
    layout->addWidget(m_caution, 3, 1, 1, 2);
    layout->setColumnStretch(1, 1);
    showPrompt({});
}

void VerdictCard::setLook(const Look& look)
{
    m_mark->setLook(look);
}

void VerdictCard::setRank(const char* rank)
{
    if (property("verdict") == QLatin1String{rank})
        return;
    for (QWidget* widget : std::initializer_list<QWidget*>{this, m_word}) {
        widget->setProperty("verdict", rank);
        widget->style()->unpolish(widget);
        widget->style()->polish(widget);
    }
}

void VerdictCard::show(const Judgement& judgement, const GapInterval& reading,
                       const CouplingStanding& standing, const QString& callName, const QString& callPhone)
{
    const Says own = saysOf(judgement.verdict);
    // Gravest first. Not read is no more than that this reading is not on the disk yet.
    const bool isNotSeen = judgement.verdict == Verdict::CannotTell && standing.says == Says::Asked &&
                           standing.asked == QuestionKind::CannotSee;
    const bool isWorse = standing.says < own && standing.says != Says::NotRead && !isNotSeen;
    m_says = isWorse ? standing.says : own;
    const QString explanation = VerdictWords::explanation(judgement, reading);
    setRank(rankOf(*m_says));
    m_mark->show(*m_says);
    m_word->setText(isWorse || isNotSeen ? StandingWords::inFull(standing)
                                         : VerdictWords::word(judgement.verdict));
    m_explanation->setText(isWorse ? StandingWords::thisReading(judgement.verdict, explanation)
                                   : explanation);
    const Verdict careful = *m_says == Says::Outside ? Verdict::Outside : judgement.verdict;
    m_caution->setText(VerdictWords::caution(careful, callName, callPhone));
    showParts(true);
    setAccessibleName(m_word->text());
    setAccessibleDescription(m_explanation->text() + QLatin1Char(' ') + m_caution->text());
}

void VerdictCard::showAsFound(const GapInterval& reading, const CouplingStanding& standing,
                              const QString& callName, const QString& callPhone)
{
    CouplingStanding found = standing; // gravest first
    if (found.says > Says::PartSeated)
        found.says = Says::PartSeated;
    m_says = found.says;
    setRank(rankOf(*m_says));
    m_mark->show(*m_says);
    m_word->setText(StandingWords::inFull(found));
    m_explanation->setText(StandingWords::asFound(reading));
    m_caution->setText(VerdictWords::caution(Verdict::Outside, callName, callPhone));
    showParts(true);
    setAccessibleName(m_word->text());
    setAccessibleDescription(m_explanation->text() + QLatin1Char(' ') + m_caution->text());
}

void VerdictCard::showPrompt(const QString& sentence)
{
    setRank("unknown");
    m_says.reset();
    m_explanation->setText(sentence);
    m_kept->clear();
    showParts(false);
    setAccessibleName(sentence);
    setAccessibleDescription({});
}

// A child that comes or goes has the whole page laid out at once, but for a card that is away meanwhile.
void VerdictCard::showParts(bool shown)
{
    if (m_arePartsShown == shown)
        return;
    m_arePartsShown = shown;
    const bool isSeen = isVisible();
    if (isSeen)
        hide();
    for (QWidget* part : std::initializer_list<QWidget*>{m_mark, m_word, m_caution, m_kept})
        part->setVisible(shown);
    if (isSeen)
        QFrame::show();
}

void VerdictCard::setMovement(const QString& sentence)
{
    if (m_movement->text() == sentence)
        return;
    m_movement->setText(sentence);
    m_movement->setVisible(!sentence.isEmpty());
}

void VerdictCard::setKept(const QString& sentence)
{
    m_kept->setText(sentence);
}

} // namespace rig
