#pragma once

#include <QFrame>

class QLabel;
class QLineEdit;

namespace rig {

// One figure to be measured: a line to type it in, what was measured, and what the manual says beside it.
class MeasureCard : public QFrame
{
    Q_OBJECT

public:
    explicit MeasureCard(const char* objectName, QWidget* parent = nullptr);

    void setTitle(const QString& title, const QString& unit);
    void setOpen(bool open);
    // `words` are the sentences below the line.
    void show(const QStringList& words);
    void refuse(const QString& sentence);
    void focusLine();
    void clear(); // what was typed at another surface, and its refusal
    // What Enter takes: the figure in the line, while the keys go there. Empty: Enter is somebody else's.
    QString figureForEnter() const;

private:
    QLabel* m_title = nullptr;
    QLabel* m_unit = nullptr;
    QLineEdit* m_line = nullptr;
    QLabel* m_refusal = nullptr;
    QLabel* m_words = nullptr;
};

} // namespace rig
