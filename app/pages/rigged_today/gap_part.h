#pragma once

#include "app/pages/rigged_today/rigged_today_presenter.h"
#include "app/theme/theme.h"

#include <QObject>

class QKeyEvent;
class QLabel;
class QVBoxLayout;

namespace rig {

class GapStripWidget;
class LeafRow;
class VerdictCard;

// The gap of a joint: the strip with its band, the leaves, and what the reading is judged as.
class GapPart : public QObject
{
    Q_OBJECT

public:
    // `sheet` is the one at hand, whichever that is when it is displayed; it outlives this.
    GapPart(const CouplingSheet& sheet, QVBoxLayout* layout, QObject* parent);

    void setLook(const Look& look);
    void display(const RiggedTodayView& view);

    // The verdict, at once and before anything is saved.
    // Without a judgement it is one as the joint was found.
    void showReading(const GaugeReading& reading, const std::optional<Judgement>& judgement);
    void beginAnew();
    void showNotSaved();
    void showMovement(const QString& sentence);

    bool isMeasuring() const { return m_leavesOpen; }
    LeafRow* leaves() const { return m_leaves; }
    // The card, while it says anything of a reading.
    VerdictCard* verdict() const;
    // Of the verdict, or of what comes before it.
    QWidget* card() const;
    // Takes back what was typed of a figure. False when nothing was.
    bool clearFigure();
    // Inside a figure no letter answers or asks for anything: it spoils the figure, which is then refused.
    bool takeFigureKey(QKeyEvent* event);
    // What a figure begins with, or what comes before one can be typed.
    bool takeKey(QKeyEvent* event);
    bool takeMoreKey(const QKeyEvent& event);

signals:
    void readingChosen(const rig::GaugeReading& reading);
    void figureRefused();

private:
    bool hasGap() const { return m_sheet.flow.asks.parts.gap; }
    void addLeaves(QVBoxLayout* layout);
    void showWhatIsThere();
    void showLeaves();
    void showVerdict();
    void showLast(const SheetReading& last);
    void showJudged(const GapInterval& reading, SeatState state, const std::optional<Judgement>& judgement);
    QString whatToDo() const;
    QString whyNoFigure() const;

    const CouplingSheet& m_sheet;
    CouplingStanding m_standing; // before what is pressed and not yet saved
    QString m_callName;
    QString m_callPhone;
    bool m_leavesOpen = false;
    QLabel* m_noGap = nullptr;
    GapStripWidget* m_strip = nullptr;
    QLabel* m_leafLabel = nullptr;
    LeafRow* m_leaves = nullptr;
    QLabel* m_leafNote = nullptr;
    VerdictCard* m_verdict = nullptr;
    QLabel* m_struck = nullptr;
};

} // namespace rig
