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
    // Empties the line; `words` are the sentences below it.
    void show(const QStringList& words);
    void refuse(const QString& sentence);
    void focusLine();
    void clear(); // what was typed at another surface, and its refusal

signals:
    void typed(const QString& figure); // Enter in the line

private:
    QLabel* m_title = nullptr;
    QLabel* m_unit = nullptr;
    QLineEdit* m_line = nullptr;
    QLabel* m_refusal = nullptr;
    QLabel* m_words = nullptr;
};

} // namespace rig
