#include "app/pages/rigged_today/measure_card.h"

#include "app/widgets/parts.h"
#include "app/wording/control_words.h"

#include <QHBoxLayout>
#include <QLineEdit>
#include <QVBoxLayout>

namespace rig {

MeasureCard::MeasureCard(const char* objectName, QWidget* parent) : QFrame{parent}
{
    setProperty("card", true);
    auto* layout = new QVBoxLayout{this};
    layout->setContentsMargins(12, 8, 12, 10);
    layout->setSpacing(4);
    m_title = labelOf({}, "label");
    layout->addWidget(m_title);
    auto* row = new QHBoxLayout;
    m_line = new QLineEdit;
    m_line->setObjectName(QLatin1String(objectName));
    m_line->setMinimumWidth(80);
    m_line->setInputMethodHints(Qt::ImhFormattedNumbersOnly);
    m_unit = labelOf({}, "soft");
    m_unit->setWordWrap(false);
    row->addWidget(m_line, 1);
    row->addWidget(m_unit);
    layout->addLayout(row);
    const QByteArray name{objectName};
    m_refusal = labelOf({}, "problem", (name + "Problem").constData());
    m_words = labelOf({}, "soft", (name + "Words").constData());
    // Long sentences make the card higher, never wider: three of them stand side by side.
    for (QLabel* label : {m_refusal, m_words})
        label->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    m_refusal->hide();
    layout->addWidget(m_refusal);
    layout->addWidget(m_words);
    layout->addStretch(1);
    connect(m_line, &QLineEdit::textEdited, this, [this] { sayIn(m_refusal, {}); });
}

void MeasureCard::setTitle(const QString& title, const QString& unit)
{
    m_title->setText(title);
    m_unit->setText(unit);
    m_line->setAccessibleName(title + QLatin1String(", ") + unit);
}

void MeasureCard::setOpen(bool open)
{
    m_line->setEnabled(open);
}

void MeasureCard::show(const QStringList& words)
{
    sayIn(m_words, words.join(QLatin1Char(' ')));
    m_line->setAccessibleDescription(m_words->text());
}

void MeasureCard::refuse(const QString& sentence)
{
    sayIn(m_refusal, sentence);
    m_line->setAccessibleDescription(sentence);
    m_line->selectAll();
}

void MeasureCard::focusLine()
{
    m_line->setFocus();
    m_line->selectAll();
}

QString MeasureCard::figureForEnter() const
{
    return window()->focusWidget() == m_line ? m_line->text().trimmed() : QString{};
}

void MeasureCard::clear()
{
    m_line->clear();
    sayIn(m_refusal, {});
}

} // namespace rig
