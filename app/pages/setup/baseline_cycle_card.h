#pragma once

#include "app/pages/setup/baseline_work.h"
#include "app/theme/theme.h"
#include "core/rigging/rigging_record.h"

#include <QFrame>

class QKeyEvent;
class QLabel;
class QPushButton;
class QVBoxLayout;

namespace rig {

class ChoiceBox;
class GapStripWidget;
class LeafRow;
class QuestionTile;

// One cycle at one coupling: who, with what, the two confirmations, the leaf row, and the band so far.
class BaselineCycleCard : public QFrame
{
    Q_OBJECT

public:
    explicit BaselineCycleCard(QWidget* parent = nullptr);

    void display(const BaselineDayView& view, const BaselineSheet& sheet, const BaselineWork& work);
    void setLook(const Look& look);
    bool takeKey(QKeyEvent* event);

signals:
    void personChosen(std::optional<rig::PersonId> person);
    void gaugeChosen(std::optional<rig::GaugeId> gauge);
    void reconnectedAnswered(bool yes);
    void lockedAnswered(bool yes);
    void readingChosen(const rig::GaugeReading& reading);
    void correctionDropped();

private:
    void buildTop(QVBoxLayout* layout);
    void buildTiles(QVBoxLayout* layout);
    void buildReading(QVBoxLayout* layout);
    void fillChoices(const BaselineDayView& view, const BaselineWork& work);
    void showTiles(const BaselineWork& work, bool open);
    void showLeaves(const BaselineDayView& view, const BaselineSheet& sheet, const BaselineWork& work);
    void showStrip(const BaselineSheet& sheet);
    void showNumbers(const BaselineSheet& sheet);

    BaselineCycle::Ask m_asked = BaselineCycle::Ask::Nothing;

    QLabel* m_title = nullptr;
    QLabel* m_access = nullptr;
    ChoiceBox* m_person = nullptr;
    ChoiceBox* m_gauge = nullptr;
    QuestionTile* m_reconnected = nullptr;
    QuestionTile* m_locked = nullptr;
    QLabel* m_notice = nullptr;
    QPushButton* m_drop = nullptr;
    LeafRow* m_leaves = nullptr;
    QLabel* m_refused = nullptr;
    QLabel* m_kept = nullptr;
    GapStripWidget* m_strip = nullptr;
    QLabel* m_numbers = nullptr;
};

} // namespace rig
