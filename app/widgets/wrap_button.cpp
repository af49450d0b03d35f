#include "app/widgets/wrap_button.h"

#include <QEvent>

namespace rig {

namespace {

QString inLines(const QString& words, const QFontMetrics& metrics, int room)
{
    QString lines;
    QString line;
    for (const QString& word : words.split(QLatin1Char(' '))) {
        const QString longer = line.isEmpty() ? word : line + QLatin1Char(' ') + word;
        if (line.isEmpty() || metrics.horizontalAdvance(longer) <= room) {
            line = longer;
            continue;
        }
        lines += line.trimmed() + QLatin1Char('\n');
        line = word;
    }
    return lines + line;
}

} // namespace

WrapButton::WrapButton(QWidget* parent) : QPushButton{parent}
{
    setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
}

void WrapButton::setWords(const QString& words)
{
    m_words = words;
    setText(words);
    wrap();
}

void WrapButton::resizeEvent(QResizeEvent* event)
{
    QPushButton::resizeEvent(event);
    wrap();
}

void WrapButton::changeEvent(QEvent* event)
{
    QPushButton::changeEvent(event);
    if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange)
        wrap();
}

// What stands beside the words is the style's.
void WrapButton::wrap()
{
    const int beside = sizeHint().width() - fontMetrics().size(Qt::TextShowMnemonic, text()).width();
    setText(inLines(m_words, fontMetrics(), width() - beside));
}

} // namespace rig
