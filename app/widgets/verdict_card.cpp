#include "app/widgets/verdict_card.h"

#include "app/widgets/mark_widget.h"
#include "app/wording/verdict_words.h"

#include <QGridLayout>
#include <QLabel>
#include <QStyle>

namespace rig {

const char* rankOf(Verdict verdict)
{
    switch (verdict) {
    case Verdict::Inside:
        return "inside";
    case Verdict::NearEdge:
        return "near";
    case Verdict::Outside:
        return "outside";
    case Verdict::NoBandYet:
    case Verdict::CannotTell:
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
    m_kept = new QLabel;
    m_kept->setProperty("kind", "soft");
    m_kept->setObjectName("verdictKept");
    layout->addWidget(m_mark, 0, 0, 2, 1, Qt::AlignTop);
    layout->addWidget(m_word, 0, 1);
    layout->addWidget(m_kept, 0, 2, Qt::AlignRight);
    layout->addWidget(m_explanation, 1, 1, 1, 2);
    layout->addWidget(m_caution, 2, 1, 1, 2);
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

void VerdictCard::show(const Judgement& judgement, const GapInterval& reading, const QString& callName,
                       const QString& callPhone)
{
    setRank(rankOf(judgement.verdict));
    m_mark->show(judgement.verdict);
    m_mark->setVisible(true);
    m_word->setText(VerdictWords::word(judgement.verdict));
    m_word->setVisible(true);
    m_explanation->setText(VerdictWords::explanation(judgement, reading));
    m_caution->setText(VerdictWords::caution(judgement.verdict, callName, callPhone));
    m_caution->setVisible(true);
    m_kept->setVisible(true);
    setAccessibleName(m_word->text());
    setAccessibleDescription(m_explanation->text() + QLatin1Char(' ') + m_caution->text());
}

void VerdictCard::showPrompt(const QString& sentence)
{
    setRank("unknown");
    m_mark->setVisible(false);
    m_word->setVisible(false);
    m_explanation->setText(sentence);
    m_caution->setVisible(false);
    m_kept->clear();
    m_kept->setVisible(false);
    setAccessibleName(sentence);
    setAccessibleDescription({});
}

void VerdictCard::setKept(const QString& sentence)
{
    m_kept->setText(sentence);
}

} // namespace rig
