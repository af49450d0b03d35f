#include "app/widgets/verdict_card.h"

#include "app/widgets/announcer.h"
#include "app/widgets/beside_or_below.h"
#include "app/widgets/mark_widget.h"
#include "app/widgets/parts.h"
#include "app/wording/standing_words.h"
#include "app/wording/verdict_words.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QStyle>

#include <algorithm>
#include <array>

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
    case Says::OutsideBefore:
    case Says::Asked:
    case Says::PartSeated:
    case Says::NotSecured:
    case Says::InDoubt:
        return "near";
    case Says::Outside:
    case Says::Stopped:
        return "outside";
    case Says::CannotTell:
    case Says::NoBandYet:
    case Says::Hidden:
    case Says::NotRead:
    case Says::NoGap:
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
    m_word->setTextFormat(Qt::PlainText);
    m_word->setProperty("kind", "verdict");
    m_word->setObjectName("verdictWord");
    m_word->setWordWrap(true); // at large text “and nobody has resolved it” is wider than a small window
    m_explanation = new QLabel;
    m_explanation->setTextFormat(Qt::PlainText);
    m_explanation->setWordWrap(true);
    m_explanation->setObjectName("verdictExplanation");
    m_caution = new QLabel;
    m_caution->setTextFormat(Qt::PlainText);
    m_caution->setWordWrap(true);
    m_caution->setObjectName("verdictCaution");
    m_movement = new QLabel;
    m_movement->setTextFormat(Qt::PlainText);
    m_movement->setWordWrap(true);
    m_movement->setObjectName("verdictMovement");
    m_movement->setProperty("kind", "caution");
    m_movement->hide();
    m_kept = new QLabel;
    m_kept->setTextFormat(Qt::PlainText);
    m_kept->setProperty("kind", "soft");
    m_kept->setObjectName("verdictKept");
    m_more = labelOf({}, "soft", "verdictMore");
    m_ask = buttonOf({}, "verdictAsk", "link");
    m_ask->setFocusPolicy(Qt::TabFocus); // a press leaves the keys with the page
    connect(m_ask, &QPushButton::clicked, this, &VerdictCard::toggleMore);
    layout->addWidget(m_mark, 0, 0, 2, 1, Qt::AlignTop);
    auto* aside = new QWidget;
    auto* row = new QHBoxLayout{aside};
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(14);
    row->addWidget(m_kept);
    row->addWidget(m_ask);
    layout->addWidget(new BesideOrBelow{m_word, aside}, 0, 1);
    layout->addWidget(m_explanation, 1, 1);
    layout->addWidget(m_movement, 2, 1);
    layout->addWidget(m_caution, 3, 1);
    layout->addWidget(m_more, 4, 1);
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
    const bool isWorse =
        standing.says < own && standing.says != Says::NotRead && standing.says != Says::NoGap && !isNotSeen;
    m_says = isWorse ? standing.says : own;
    const QString explanation = VerdictWords::sentence(judgement, reading);
    setRank(rankOf(*m_says));
    m_mark->show(*m_says);
    m_word->setText(isWorse || isNotSeen ? StandingWords::inFull(standing)
                                         : VerdictWords::word(judgement.verdict));
    m_explanation->setText(isWorse ? StandingWords::thisReading(judgement.verdict, explanation)
                                   : explanation);
    const Verdict careful = *m_says == Says::Outside ? Verdict::Outside : judgement.verdict;
    m_caution->setText(cautionFor(careful, callName, callPhone));
    if (standing.factsInDoubt)
        m_caution->setText(m_caution->text() + QLatin1Char(' ') + StandingWords::whereFacts());
    m_more->setText(VerdictWords::more(judgement));
    showParts(true);
    describe();
}

QString VerdictCard::cautionFor(Verdict verdict, const QString& callName, const QString& callPhone) const
{
    if (verdict == Verdict::Outside && !m_paperDay.isEmpty())
        return VerdictWords::outsideThen(m_paperDay);
    return m_isSecond ? VerdictWords::cautionOfSecond(verdict, callName, callPhone)
                      : VerdictWords::caution(verdict, callName, callPhone);
}

void VerdictCard::showStopped()
{
    m_caution->setText(VerdictWords::stoppedCaution());
    describe();
}

void VerdictCard::showAsFound(const GapInterval& reading, Says foundAs, const CouplingStanding& standing,
                              const QString& callName, const QString& callPhone)
{
    CouplingStanding found = standing; // gravest first
    found.says = std::min(found.says, foundAs);
    m_says = found.says;
    setRank(rankOf(*m_says));
    m_mark->show(*m_says);
    m_word->setText(StandingWords::inFull(found));
    m_explanation->setText(StandingWords::asFound(reading));
    m_caution->setText(cautionFor(Verdict::Outside, callName, callPhone));
    m_more->clear();
    showParts(true);
    describe();
}

void VerdictCard::showPrompt(const QString& sentence)
{
    setRank("unknown");
    m_says.reset();
    m_explanation->setText(sentence);
    m_kept->clear();
    announce(*this, {});
    showParts(false);
    setAccessibleName(sentence);
    setAccessibleDescription({});
}

bool VerdictCard::prompts(const QString& sentence) const
{
    return !m_says && m_explanation->text() == sentence;
}

void VerdictCard::describe()
{
    setAccessibleName(m_word->text());
    setAccessibleDescription(
        QStringList{m_explanation->text(), m_caution->text(), m_more->text()}.join(QLatin1Char(' ')));
    announce(*this,
             QStringList{m_word->text() + QLatin1Char('.'), m_explanation->text(), m_caution->text()}.join(
                 QLatin1Char(' ')));
}

bool VerdictCard::hasMore() const
{
    return m_ask->isVisible();
}

void VerdictCard::toggleMore()
{
    m_isMoreAsked = !m_isMoreAsked;
    showParts(m_arePartsShown);
    announce(*m_more, m_isMoreAsked ? m_more->text() : QString{});
}

// A child that comes or goes has the whole page laid out at once, but for a card that is away meanwhile.
void VerdictCard::showParts(bool shown)
{
    m_arePartsShown = shown;
    const bool isMore = shown && !m_more->text().isEmpty();
    m_ask->setText(m_isMoreAsked ? VerdictWords::showLess() : VerdictWords::showMore());
    const std::array<std::pair<QWidget*, bool>, 6> parts{{{m_mark, shown},
                                                          {m_word, shown},
                                                          {m_caution, shown},
                                                          {m_kept, shown},
                                                          {m_ask, isMore},
                                                          {m_more, isMore && m_isMoreAsked}}};
    if (std::ranges::all_of(parts, [](const auto& one) { return one.first->isHidden() != one.second; }))
        return;
    const bool isSeen = isVisible();
    if (isSeen)
        hide();
    for (const auto& [part, is] : parts)
        part->setVisible(is);
    if (isSeen)
        QFrame::show();
}

void VerdictCard::setMovement(const QString& sentence)
{
    if (m_movement->text() == sentence)
        return;
    m_movement->setText(sentence);
    m_movement->setVisible(!sentence.isEmpty());
    announce(*m_movement, sentence);
}

void VerdictCard::setKept(const QString& sentence)
{
    m_kept->setText(sentence);
    announce(*m_kept, sentence);
}

} // namespace rig
