#include "app/pages/trends/now_card.h"

#include "app/widgets/mark_widget.h"
#include "app/widgets/parts.h"
#include "app/widgets/verdict_card.h"
#include "app/wording/trends_page_words.h"
#include "app/wording/verdict_words.h"

#include <QGridLayout>
#include <QLabel>
#include <QStyle>

namespace rig {

namespace {

QString latestSentence(const CouplingTrend& trend)
{
    if (!trend.latest)
        return TrendsPageWords::noReadingsSentence();
    const TrendsReading& reading = trend.readings[trend.latest->reading];
    TrendsPageWords::Latest latest;
    latest.rigging = reading.riggingNumber;
    latest.day = reading.reading.when.localDay();
    latest.interval = reading.reading.interval;
    latest.among = trend.latest->among;
    latest.person = QString::fromStdString(reading.person);
    latest.gauge = QString::fromStdString(reading.gauge);
    return TrendsPageWords::latest(latest);
}

QString countsSentence(const FittingCounts& counts)
{
    return TrendsPageWords::counts({counts.all(), counts.nearEdge, counts.outside, counts.cannotTell,
                                    counts.noBand, counts.outsideSetAside, counts.partSeatedAtRigging});
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
    if (trend.latest && !trend.latest->partSeated) {
        m_mark->show(trend.latest->verdict);
        m_title->setText(TrendsPageWords::latestTitle(VerdictWords::word(trend.latest->verdict)));
        setRank(rankOf(trend.latest->verdict));
    } else {
        m_mark->show(MarkShape::Waiting, Role::Unknown);
        m_title->setText(trend.latest ? TrendsPageWords::foundPartSeatedTitle()
                                      : TrendsPageWords::noReadingsTitle());
        setRank("unknown");
    }
    m_latest->setText(latestSentence(trend));
    m_counts->setText(countsSentence(trend.counts));
    m_counts->setVisible(!trend.readings.empty());
    QStringList last;
    if (annualDue)
        last << TrendsPageWords::annualDue(*annualDue, today);
    last << TrendsPageWords::caution();
    m_caution->setText(last.join(QLatin1Char(' ')));
    setAccessibleName(m_title->text());
    setAccessibleDescription(m_latest->text() + QLatin1Char(' ') + m_counts->text() + QLatin1Char(' ') +
                             m_caution->text());
}

} // namespace rig
