#pragma once

#include <QFrame>

class QLabel;
class QPushButton;

namespace rig {

// A sentence on what went wrong, below the top bar until it is put away. Where it is about a whole file that
// cannot be opened, salvaging may be offered beside it.
class ProblemBanner : public QFrame
{
    Q_OBJECT

public:
    explicit ProblemBanner(QWidget* parent = nullptr);

    void say(const QString& sentence);
    void sayOfFile(const QString& sentence, bool mayBeSalvaged);

signals:
    void salvageAsked();

private:
    QLabel* m_text = nullptr;
    QPushButton* m_salvage = nullptr;
};

} // namespace rig
