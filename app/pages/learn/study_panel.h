#pragma once

#include "app/pages/learn/measuring_presenter.h"
#include "app/theme/theme.h"

#include <QWidget>

#include <map>

class QCheckBox;
class QGridLayout;
class QKeyEvent;
class QLabel;
class QPushButton;
class QSpinBox;
class QStackedWidget;
class QVBoxLayout;

namespace rig {

class ChoiceBox;
class LeafRow;

// The crossed study, from ticking who and what to its sentence and its table. A reading belongs to the place
// that stood here when it was pressed.
class StudyPanel : public QWidget
{
    Q_OBJECT

public:
    explicit StudyPanel(QWidget* parent = nullptr);

    void display(const StudyView& view);
    void setLook(const Look& look);
    bool takeKey(QKeyEvent* event);
    void forget();

signals:
    void beginAsked(const std::vector<rig::CouplingId>& couplings, const std::vector<rig::PersonId>& persons,
                    int repeats);
    void readingTaken(const rig::StudyPlace& place, rig::GaugeId gauge, const rig::GaugeReading& reading);

private:
    QWidget* makePlan();
    QWidget* makeReading();
    QWidget* makeResult();
    void showPlan();
    void showReading();
    void showResult();
    void showWanted();
    void showLeaves();
    std::vector<CouplingId> tickedCouplings() const;
    std::vector<PersonId> tickedPersons() const;

    StudyView m_view;
    bool m_isPlanning = false; // another study, though one is whole
    QStackedWidget* m_stack = nullptr;
    QVBoxLayout* m_couplingBoxes = nullptr;
    QVBoxLayout* m_personBoxes = nullptr;
    std::vector<std::pair<CouplingId, QCheckBox*>> m_couplings;
    std::vector<std::pair<PersonId, QCheckBox*>> m_persons;
    QSpinBox* m_repeats = nullptr;
    QLabel* m_wanted = nullptr;
    QPushButton* m_begin = nullptr;
    QLabel* m_progress = nullptr;
    QLabel* m_next = nullptr;
    ChoiceBox* m_gauge = nullptr;
    LeafRow* m_leaves = nullptr;
    QLabel* m_refused = nullptr;
    QLabel* m_result = nullptr;
    QGridLayout* m_table = nullptr;
    QLabel* m_meaning = nullptr;
};

} // namespace rig
