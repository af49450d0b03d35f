#pragma once

#include <QCheckBox>
#include <QEvent>
#include <QPushButton>

namespace rig {

// Words on as many lines as they take in this room.
QString inLines(const QString& words, const QFontMetrics& metrics, int room);

// A button as wide as the room it is given, whose words go on to another line where they have to.
template <typename Button> class Wrapped : public Button
{
public:
    explicit Wrapped(QWidget* parent = nullptr) : Button{parent}
    {
        this->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
    }
    explicit Wrapped(const QString& words) : Wrapped{} { setWords(words); }

    void setWords(const QString& words)
    {
        m_words = words;
        this->setText(words);
        wrap();
    }

protected:
    void resizeEvent(QResizeEvent* event) override
    {
        Button::resizeEvent(event);
        wrap();
    }

    void changeEvent(QEvent* event) override
    {
        Button::changeEvent(event);
        if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange)
            wrap();
    }

private:
    // What stands beside the words is the style's.
    void wrap()
    {
        const int words = this->fontMetrics().size(Qt::TextShowMnemonic, this->text()).width();
        const int beside = this->sizeHint().width() - words;
        this->setText(inLines(m_words, this->fontMetrics(), this->width() - beside));
    }

    QString m_words; // on one line
};

using WrapButton = Wrapped<QPushButton>;
using WrapCheck = Wrapped<QCheckBox>;

} // namespace rig
