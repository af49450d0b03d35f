#pragma once

#include "app/pages/trends/trends_view.h"
#include "app/pictures/marks.h"
#include "app/theme/theme.h"

#include <QAbstractButton>
#include <QFrame>

#include <optional>
#include <vector>

class QPushButton;
class QScrollArea;
class QVBoxLayout;

namespace rig {

class TrendWidget;

// One coupling: the mark and word of its latest verdict, and its last readings as a small trend on its own
// band.
class TrendRow : public QAbstractButton
{
    Q_OBJECT

public:
    explicit TrendRow(QWidget* parent = nullptr);

    void show(const CouplingTrend& trend);
    void setLook(const Look& look);
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

signals:
    // Up, Down, Home, End: -1, 1, and far beyond either end.
    void stepAsked(int by);

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    void placeSmall();

    Look m_look;
    TrendWidget* m_small = nullptr;
    Says m_says = Says::NotRead;
    QString m_name;
    QString m_word;
};

// Every coupling in use at the left, so that the aircraft is seen at once.
class CouplingList : public QFrame
{
    Q_OBJECT

public:
    explicit CouplingList(QWidget* parent = nullptr);

    void display(const TrendsView& view, std::optional<CouplingId> chosen);
    void setLook(const Look& look);
    void setAircraftShown(bool shown);
    void bringIntoView(CouplingId coupling);

signals:
    void couplingChosen(rig::CouplingId coupling);
    void aircraftAsked(); // all couplings together, or back

private:
    TrendRow* row(std::size_t index);
    void step(std::size_t from, int by);

    Look m_look;
    QPushButton* m_aircraft = nullptr;
    QScrollArea* m_scroll = nullptr;
    QVBoxLayout* m_layout = nullptr;
    std::vector<TrendRow*> m_rows;
    std::vector<CouplingId> m_couplings;
};

} // namespace rig
