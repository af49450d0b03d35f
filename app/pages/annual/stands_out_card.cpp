#include "app/pages/annual/stands_out_card.h"

#include "app/pages/annual/link_name.h"
#include "app/widgets/mark_widget.h"
#include "app/widgets/parts.h"
#include "app/widgets/pressable.h"
#include "app/wording/annual_words.h"

#include <QHBoxLayout>
#include <QStyle>
#include <QVBoxLayout>

namespace rig {

namespace {

constexpr double kMark = 0.72; // of the usual mark: it stands in a line of text

} // namespace

StandsOutCard::StandsOutCard(QWidget* parent) : QFrame{parent}
{
    setObjectName("standsOutCard");
    m_layout = new QVBoxLayout{this};
    m_layout->setContentsMargins(16, 10, 16, 10);
}

void StandsOutCard::setLook(const Look& look)
{
    m_look = look;
    for (MarkWidget* mark : findChildren<MarkWidget*>())
        mark->setLook(look);
    for (Pressable* link : links())
        link->setLook(look);
}

QList<Pressable*> StandsOutCard::links() const
{
    return findChildren<Pressable*>();
}

void StandsOutCard::display(const AnnualView& view)
{
    setProperty("verdict", view.headlines.empty() ? "unknown" : "near");
    style()->unpolish(this);
    style()->polish(this);
    delete m_inside;
    m_inside = new QWidget;
    auto* layout = new QVBoxLayout{m_inside};
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(2);
    for (const AnnualHeadline& headline : view.headlines)
        layout->addWidget(rowOf(headline));
    if (view.headlines.empty())
        layout->addWidget(labelOf(view.nothingGrave, "strong", "nothingGrave"));
    else
        layout->addWidget(labelOf(AnnualWords::headlinesHint(view.moreHeadlines), "soft", "moreHeadlines"));
    m_layout->addWidget(m_inside);
    QStringList said;
    for (const AnnualHeadline& headline : view.headlines)
        said << headline.sentence << headline.figures;
    setAccessibleName(AnnualWords::standsOutTitle());
    setAccessibleDescription(view.headlines.empty() ? view.nothingGrave : said.join(QLatin1Char(' ')));
}

Pressable* StandsOutCard::rowOf(const AnnualHeadline& headline)
{
    auto* whole = new Pressable;
    whole->setLook(m_look);
    whole->setObjectName(linkName("headline", headline.coupling));
    whole->setAccessibleName(headline.sentence);
    whole->setAccessibleDescription(headline.figures + QLatin1Char(' ') + AnnualWords::opensTrend());
    connect(whole, &Pressable::clicked, this,
            [this, coupling = headline.coupling] { emit couplingOpened(coupling); });
    auto* row = new QHBoxLayout{whole};
    row->setContentsMargins(4, 2, 4, 2);
    row->setSpacing(12);
    auto* mark = new MarkWidget;
    mark->setLook(m_look);
    mark->show(headline.shape, headline.role);
    mark->setFixedSize(mark->size() * kMark);
    row->addWidget(mark, 0, Qt::AlignTop);
    auto* words = labelOf({}, "body", "headline");
    words->setTextFormat(Qt::RichText);
    words->setText(QStringLiteral("<b>%1</b> %2")
                       .arg(headline.sentence.toHtmlEscaped(), headline.figures.toHtmlEscaped()));
    row->addWidget(words, 1);
    return whole;
}

} // namespace rig
