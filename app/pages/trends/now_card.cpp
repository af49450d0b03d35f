#include "app/pages/trends/now_card.h"

#include "app/widgets/mark_widget.h"
#include "app/widgets/parts.h"
#include "app/widgets/verdict_card.h"
#include "app/wording/standing_words.h"
#include "app/wording/trends_page_words.h"

#include <QGridLayout>
#include <QLabel>
#include <QStyle>

#include <algorithm>

namespace rig {

namespace {

QString standingTitle(const CouplingTrend& trend)
{
    if (trend.readings.empty() && !trend.standing.isSaidFirst() && trend.series.hasGap)
        return TrendsPageWords::noReadingsTitle();
    const QString standing = StandingWords::inFull(trend.standing);
    return trend.standing.judgement && !trend.standing.isSaidFirst() ? TrendsPageWords::latestTitle(standing)
                                                                     : standing;
}

QString readingSentence(const CouplingTrend& trend)
{
    const auto& said = trend.standing.reading;
    if (!said)
        return trend.series.hasGap ? TrendsPageWords::noReadingsSentence() : TrendsPageWords::noGapSentence();
    TrendsPageWords::Latest latest;
    const auto one = std::ranges::find(trend.readings, said->id,
                                       [](const TrendsReading& reading) { return reading.reading.id; });
    if (one != trend.readings.end()) {
        latest.rigging = one->riggingNumber;
        latest.person = QString::fromStdString(one->person);
        latest.gauge = QString::fromStdString(one->gauge);
    }
    latest.day = said->when.localDay();
    latest.interval = said->interval;
    latest.among = trend.standing.among;
    return TrendsPageWords::latest(latest);
}

QString countsSentence(const FittingCounts& counts)
{
    return TrendsPageWords::counts({counts.all(), counts.nearEdge, counts.outside, counts.cannotTell,
                                    counts.noBand, counts.outsideSetAside, counts.outsideTogether,
                                    counts.partSeatedAtRigging, counts.notSecuredAtRigging});
}

} // namespace

NowCard::NowCard(QWidget* parent) : QFrame{parent}
{
    setObjectName("nowCard");
    auto* layout = new QGridLayout{this};
    layout->setContentsMargins(16, 8, 16, 8);
    layout->setHorizontalSpacing(14);
    layout->setVerticalSpacing(2);
    m_mark = new MarkWidget;
    m_title = labelOf({}, "verdict", "nowTitle");
    m_latest = labelOf({}, "body", "nowLatest");
    m_counts = labelOf({}, "body", "nowCounts");
    m_caution = labelOf({}, "soft", "nowCaution");
    layout->addWidget(m_mark, 0, 0, 2, 1, Qt::AlignTop);
    layout->addWidget(m_title, 0, 1);
    layout->addWidget(m_latest, 1, 1);
    layout->addWidget(m_counts, 2, 1);
    layout->addWidget(m_caution, 3, 1);
    layout->setColumnStretch(1, 1);
}

void NowCard::setLook(const Look& look)
{
    m_mark->setLook(look);
}

void NowCard::setRank(const char* rank)
{
    for (QWidget* widget : std::initializer_list<QWidget*>{this, m_title}) {
        widget->setProperty("verdict", rank);
        widget->style()->unpolish(widget);
        widget->style()->polish(widget);
    }
}

void NowCard::display(const CouplingTrend& trend, std::optional<Day> annualDue, Day today)
{
    m_mark->show(trend.standing.says);
    m_title->setText(standingTitle(trend));
    setRank(rankOf(trend.standing.says));
    m_latest->setText(readingSentence(trend));
    m_counts->setText(countsSentence(trend.counts));
    m_counts->setVisible(!trend.readings.empty());
    QStringList last;
    if (trend.standing.factsInDoubt)
        last << StandingWords::whereFacts();
    if (annualDue)
        last << TrendsPageWords::annualDue(*annualDue, today);
    last << TrendsPageWords::caution();
    m_caution->setText(last.join(QLatin1Char(' ')));
    setAccessibleName(m_title->text());
    setAccessibleDescription(m_latest->text() + QLatin1Char(' ') + m_counts->text() + QLatin1Char(' ') +
                             m_caution->text());
}

} // namespace rig
