#pragma once

#include <QWidget>

class QBoxLayout;

namespace rig {

// Two parts beside each other, the first as wide as it can be; in a room too narrow for both the second
// stands below the first.
class BesideOrBelow : public QWidget
{
    Q_OBJECT

public:
    BesideOrBelow(QWidget* first, QWidget* second, QWidget* parent = nullptr);

    QSize minimumSizeHint() const override;

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    QWidget* m_first;
    QWidget* m_second;
    QBoxLayout* m_layout;
};

} // namespace rig
