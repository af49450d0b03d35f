#pragma once

#include <QLineEdit>

#include <optional>

namespace rig {

// A line for a whole number that Up and Down move by one, the page keys by ten. It may be empty; what is
// typed is read by whoever asked for it. The wheel, which scrolls the form, moves nothing.
class StepLine : public QLineEdit
{
    Q_OBJECT

public:
    StepLine(int least, int most, QWidget* parent = nullptr);

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void step(int by);

    int m_least;
    int m_most;
};

// What is typed as one; empty where it is none of these. The minus of print is read too.
std::optional<int> wholeNumberIn(const QString& typed, int least, int most);

} // namespace rig
