#pragma once

#include "app/theme/theme.h"
#include "app/widgets/typed_figure.h"
#include "core/measure/gauge_set.h"

#include <QString>
#include <QWidget>

#include <optional>
#include <vector>

class QBoxLayout;
class QHBoxLayout;
class QKeyEvent;
class QLabel;
class QPushButton;

namespace rig {

class FigureLabel;

// The leaves of a set as big buttons: the thickest that enters is pressed, or its figure typed and taken with
// Enter. Nothing doubtful is taken; a figure that the set cannot give is refused with a sentence.
class LeafRow : public QWidget
{
    Q_OBJECT

public:
    explicit LeafRow(QWidget* parent = nullptr);

    // Shows the set around `centre`. Where it already shows this set around this centre, it stays where it
    // was paged to.
    void setGauge(const GaugeSet& gauge, std::optional<Gap> centre);
    // Marks the button of this reading and brings it into view.
    void setChosen(std::optional<GaugeReading> chosen);
    void setLook(const Look& look);

    // What is typed and not taken goes.
    void clearTyped();

    // A key typed anywhere on the page: digits, point, comma, a sign; when something is typed, whatever can
    // be typed, Backspace and Return. True when it was used.
    // Below the figure that is typed.
    bool says(const QString& sentence) const;
    bool takeKey(QKeyEvent* event);
    // Takes back what was typed. False when nothing was.
    bool clearFigure();
    // Whatever is typed now belongs to the figure.
    bool isFigureBegun() const { return !m_typed.isEmpty() && !m_typed.isRefused(); }
    // A key that begins a figure, wherever it is typed.
    static bool beginsFigure(const QKeyEvent& event);

    QSize minimumSizeHint() const override;

signals:
    void readingChosen(const rig::GaugeReading& reading);
    void entryRefused(const QString& sentence);

protected:
    void changeEvent(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;

private:
    QHBoxLayout* buildLeaves();
    QBoxLayout* buildEnds();
    int widestFrom(std::size_t first, std::size_t count) const;
    std::size_t countThatFits(std::size_t first) const;
    void centreOn(Gap gap);
    void page(int direction);
    void showLeaves();
    void fitArrows();
    QString textOf(const GaugeStep& step) const;
    void measureLeaves();
    int widthOfEnds() const;
    void markChosen();
    void pressLeaf(std::size_t shown);
    void pressEnd(bool loose);
    void offer(const GaugeOutcome& outcome, Gap asked);
    GaugeOutcome outcomeOf(Gap gap) const { return m_gauge.enters(gap); }
    void takeTyped();
    void refuseTyped();
    void showTyped();
    QString echoOfTyped() const;

    GaugeSet m_gauge;
    std::vector<GaugeStep> m_steps;
    std::vector<int> m_widths; // pixels, of what stands on each of their buttons
    std::optional<Gap> m_centre;
    std::optional<GaugeReading> m_chosen;
    FontSizes m_fonts;
    std::size_t m_first = 0; // step on the leftmost button
    std::size_t m_count = 0; // buttons shown
    TypedFigure m_typed;

    QWidget* m_leaves = nullptr;
    QPushButton* m_thinner = nullptr;
    QPushButton* m_thicker = nullptr;
    std::vector<QPushButton*> m_buttons;
    QBoxLayout* m_ends = nullptr; // buttons and what is typed, beside or below each other
    QPushButton* m_none = nullptr;
    QPushButton* m_loose = nullptr;
    FigureLabel* m_figure = nullptr;
    QLabel* m_meaning = nullptr;
};

} // namespace rig
