#pragma once

#include "app/pages/setup/baseline_day_presenter.h"
#include "app/theme/theme.h"

#include <QFrame>

#include <array>
#include <optional>

class QCheckBox;
class QKeyEvent;
class QLabel;
class QPushButton;
class QVBoxLayout;

namespace rig {

class ChoiceBox;
class GapStripWidget;
class LeafRow;

// What is going on at the coupling now, apart from the facts.
struct DemonstrationWork
{
    std::array<bool, 3> cautions{}; // not a flying day, cockpit tagged, inspection afterwards
    std::optional<PersonId> owner;
    std::optional<PersonId> second;
    std::optional<GaugeId> gauge;
    std::optional<Correction> correction; // the next figure takes the place of this reading
    QString kept;

    bool allCautions() const { return cautions[0] && cautions[1] && cautions[2]; }
};

// The cautions, who stands there, and the leaf row of a part-seated joint.
class DemonstrationCard : public QFrame
{
    Q_OBJECT

public:
    explicit DemonstrationCard(QWidget* parent = nullptr);

    void display(const BaselineDayView& view, const DemonstrationSheet& sheet, const DemonstrationWork& work);
    void setLook(const Look& look);
    // A figure typed at one coupling, or by one person, is not kept for another.
    void dropTyped();
    bool takeKey(QKeyEvent* event);

signals:
    void cautionTicked(int caution, bool ticked);
    void ownerChosen(std::optional<rig::PersonId> person);
    void secondChosen(std::optional<rig::PersonId> person);
    void gaugeChosen(std::optional<rig::GaugeId> gauge);
    void readingChosen(const rig::GaugeReading& reading);
    void correctionDropped();

private:
    void buildCautions(QVBoxLayout* layout);
    void buildChoices(QVBoxLayout* layout);
    void buildReading(QVBoxLayout* layout);
    void fillChoices(const BaselineDayView& view, const DemonstrationWork& work);
    void showLeaves(const BaselineDayView& view, const DemonstrationSheet& sheet,
                    const DemonstrationWork& work, bool open);
    void showNumbers(const DemonstrationSheet& sheet);

    QLabel* m_title = nullptr;
    QLabel* m_rigged = nullptr;
    std::array<QCheckBox*, 3> m_cautions{};
    ChoiceBox* m_owner = nullptr;
    ChoiceBox* m_second = nullptr;
    ChoiceBox* m_gauge = nullptr;
    QLabel* m_notice = nullptr;
    QPushButton* m_drop = nullptr;
    LeafRow* m_leaves = nullptr;
    QLabel* m_refused = nullptr;
    QLabel* m_kept = nullptr;
    GapStripWidget* m_strip = nullptr;
    QLabel* m_numbers = nullptr;
};

} // namespace rig
