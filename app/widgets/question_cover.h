#pragma once

#include <QPointer>
#include <QString>
#include <QStringList>
#include <QWidget>

#include <functional>

class QFrame;
class QLabel;
class QLineEdit;
class QPushButton;
class QVBoxLayout;

namespace rig {

struct QuestionText
{
    QString title;
    QString question;
    QString take;
    QString leave;
    QStringList offered = {}; // answers that one press gives
};

// Asks for a reason, in a line of words, inside the window itself, over all of it. A window of its own gets
// the keyboard only when the window manager has come round to it, and whoever types ahead loses keys on the
// way there and back; here each key goes where it would go if everybody waited. It ends itself: with an
// answer, without one, or when the asker is gone.
class QuestionCover : public QWidget
{
    Q_OBJECT

public:
    // `taken` gets the text, trimmed and in words, before the next key comes to anybody. A figure or an
    // answer's letter that was typed ahead is none.
    QuestionCover(QWidget& asker, const QuestionText& text, std::function<void(const QString&)> taken);

    static bool standsOn(const QWidget& window) { return standingOn(window); }
    static const QuestionCover* standingOn(const QWidget& window); // null: none does
    bool hasTyped() const;                                         // and not entered

protected:
    bool event(QEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;
    bool focusNextPrevChild(bool next) override;
    void keyPressEvent(QKeyEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    void addWords(QVBoxLayout* column, const QuestionText& text);
    void addOffered(QVBoxLayout* column, const QStringList& offered);
    void addButtons(QVBoxLayout* column, const QuestionText& text);
    void place();
    void keepFocus(const QWidget* now);
    void take();
    void refuse();
    void takeOffered(int index);
    void end();

    QPointer<QWidget> m_asker;
    QPointer<QWidget> m_before; // had the focus
    std::function<void(const QString&)> m_taken;
    QFrame* m_card;
    QLineEdit* m_line = nullptr;
    QLabel* m_refused = nullptr;
    QStringList m_offered;
    QPushButton* m_take = nullptr;
    QPushButton* m_leave = nullptr;
    bool m_isOver = false;
};

} // namespace rig
