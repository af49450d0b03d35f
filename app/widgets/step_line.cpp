#include "app/widgets/step_line.h"

#include <QKeyEvent>

#include <algorithm>

namespace rig {

std::optional<int> wholeNumberIn(const QString& typed, int least, int most)
{
    constexpr qsizetype kMostFigures = 5; // more than these are a slip
    const QString text = typed.trimmed().replace(QChar{0x2212}, QLatin1Char('-'));
    bool isNumber = false;
    const int number = text.toInt(&isNumber);
    if (!isNumber || text.size() > kMostFigures || number < least || number > most)
        return std::nullopt;
    return number;
}

StepLine::StepLine(int least, int most, QWidget* parent) : QLineEdit{parent}, m_least{least}, m_most{most} {}

void StepLine::step(int by)
{
    if (const auto now = wholeNumberIn(text(), m_least, m_most))
        setText(QString::number(std::clamp(*now + by, m_least, m_most)));
    else if (text().trimmed().isEmpty())
        setText(QString::number(std::clamp(0, m_least, m_most)));
    else
        return; // what cannot be read is left to be mended
    emit textEdited(text());
}

void StepLine::keyPressEvent(QKeyEvent* event)
{
    if (event->modifiers() & ~Qt::KeypadModifier)
        return QLineEdit::keyPressEvent(event);
    switch (event->key()) {
    case Qt::Key_Up:
        return step(1);
    case Qt::Key_Down:
        return step(-1);
    case Qt::Key_PageUp:
        return step(10);
    case Qt::Key_PageDown:
        return step(-10);
    default:
        QLineEdit::keyPressEvent(event);
    }
}

} // namespace rig
