#include "app/widgets/length_edit.h"

#include "app/wording/entry_words.h"
#include "app/wording/formats.h"

#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>

namespace rig {

LengthEdit::LengthEdit(const QString& accessibleName, QWidget* parent)
    : QWidget{parent}, m_line{new QLineEdit}, m_problem{new QLabel}
{
    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(2);
    m_line->setObjectName("lengthLine");
    m_line->setAccessibleName(accessibleName);
    m_line->setInputMethodHints(Qt::ImhFormattedNumbersOnly);
    m_problem->setObjectName("lengthProblem");
    m_problem->setProperty("kind", "problem");
    m_problem->setTextFormat(Qt::PlainText);
    m_problem->setWordWrap(true);
    m_problem->hide();
    column->addWidget(m_line);
    column->addWidget(m_problem);
    setFocusProxy(m_line);
    connect(m_line, &QLineEdit::textChanged, this, [this] {
        showProblem();
        emit edited();
    });
}

std::optional<Gap> LengthEdit::value() const
{
    const GapEntry entry = parseGap(m_line->text().toStdString());
    const Gap* length = std::get_if<Gap>(&entry);
    return length ? std::optional{*length} : std::nullopt;
}

void LengthEdit::setValue(std::optional<Gap> value)
{
    m_line->setText(value ? Formats{}.gap(*value) : QString{});
}

bool LengthEdit::isBlank() const
{
    return m_line->text().trimmed().isEmpty();
}

bool LengthEdit::hasProblem() const
{
    return !isBlank() && !value();
}

void LengthEdit::showProblem()
{
    const GapEntry entry = parseGap(m_line->text().toStdString());
    const EntryProblem* problem = std::get_if<EntryProblem>(&entry);
    const bool wrong = problem && *problem != EntryProblem::Empty;
    m_problem->setText(wrong ? EntryWords::refusal(*problem, m_line->text()) : QString{});
    m_problem->setVisible(wrong);
    m_line->setAccessibleDescription(m_problem->text());
}

} // namespace rig
