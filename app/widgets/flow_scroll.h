#pragma once

#include <QScrollArea>

namespace rig {

// Scrolls upright only, and gives wrapped text the height it needs at the width there is: a plain scroll area
// would squeeze it.
class FlowScroll : public QScrollArea
{
    Q_OBJECT

public:
    explicit FlowScroll(QWidget* inside, QWidget* parent = nullptr);

    // Scrolls so that all of `part` is seen, where everything stands once it is laid out.
    void bringIntoView(QWidget* part);
    // Scrolls back so that `part` begins no higher than the view, however much of it is below.
    void bringHeadIntoView(const QWidget* part);
    // To a place that verticalScrollBar() had.
    void scrollTo(int place);

protected:
    bool event(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void fit();
    void layOutNow();
    void layOutWhole();
};

} // namespace rig
