#pragma once

#include <QLabel>

namespace rig {

// Words on one line, and on more only where the room is narrower: what wraps asks for a shape of its own
// otherwise.
class WholeLine : public QLabel
{
public:
    explicit WholeLine(const QString& text, const char* kind) : QLabel{text}
    {
        setProperty("kind", kind);
        setTextFormat(Qt::PlainText);
        setWordWrap(true);
    }

    QSize sizeHint() const override
    {
        const QMargins around = contentsMargins();
        const QSize words = fontMetrics().size(Qt::TextShowMnemonic, text());
        return {words.width() + around.left() + around.right() + 2 * margin(), QLabel::sizeHint().height()};
    }
};

} // namespace rig
