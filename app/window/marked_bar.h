#pragma once

#include "app/pictures/marks.h"
#include "app/theme/theme.h"

#include <QFrame>

#include <optional>

class QHBoxLayout;
class QLabel;
class QPushButton;

namespace rig {

class MarkWidget;

// A line below the top bar: a mark, a sentence, buttons. It is there for as long as there is something to
// say.
class MarkedBar : public QFrame
{
    Q_OBJECT

public:
    enum class Tone { Caution, Problem };

    // Called `name`, its sentence name + "Text".
    MarkedBar(const char* name, Tone tone, QWidget* parent = nullptr);

    // Nothing: the line goes.
    void say(const QString& sentence);
    void mark(MarkShape shape, Role role);
    void setTone(Tone tone);
    void setLook(const Look& look);

protected:
    QLabel& text() { return *m_text; }
    void add(QPushButton* button);

private:
    std::optional<Tone> m_tone;
    MarkWidget* m_mark = nullptr;
    QLabel* m_text = nullptr;
    QHBoxLayout* m_layout = nullptr;
};

// One whose button leads to a page that is no moment of its own, and from there back.
class AsideBar : public MarkedBar
{
    Q_OBJECT

public:
    struct Words
    {
        QString show;
        QString showHint;
        QString leave;
        QString leaveHint;
    };

    AsideBar(const char* name, Tone tone, const char* button, Words words, QWidget* parent = nullptr);

    bool isOnPage() const { return m_isOnPage; }
    void setOnPage(bool isOnPage);

signals:
    void showAsked();
    void leaveAsked();

private:
    Words m_words;
    bool m_isOnPage = false;
    QPushButton* m_button = nullptr;
};

} // namespace rig
