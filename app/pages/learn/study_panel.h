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
    void showKept(const StudyPlace& place);

protected:
    void hideEvent(QHideEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

signals:
    void beginAsked(const std::vector<rig::CouplingId>& couplings, const std::vector<rig::PersonId>& persons,
                    int repeats);
    void takeBackAsked(const rig::PracticeReading& reading, const QString& what);
    void readingTaken(const rig::StudyPlace& place, rig::GaugeId gauge, const rig::GaugeReading& reading);

private:
    QWidget* makePlan();
    QWidget* makeReading();
    QWidget* makeResult();
    QWidget* makeLeft();
    QWidget* makeHandOver();
    QWidget* makeLeaves();
    QPushButton* takeBackButton();
    void showPlan();
    void showReading();
    void showLeft();
    void plan();
    void showLast();
    void begin();
    void takeBack();
    bool isBegun() const { return m_view.next && m_begun == m_view.next->id; }
    QString nameOf(PersonId person) const;
    QString nameOf(CouplingId coupling) const;
    void showResult();
    void showWanted();
    void showLeaves();
    std::vector<CouplingId> tickedCouplings() const;
    std::vector<PersonId> tickedPersons() const;

    StudyView m_view;
    bool m_isPlanning = false;           // another study, though one is whole or left
    bool m_isLeft = false;               // in the middle
    std::optional<StudyPlaceId> m_begun; // whoever is to read has said so, of this place alone
    bool m_isSeen = false; // painted since it was asked who reads: what was typed before does not say so
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
    QLabel* m_kept = nullptr;
    QWidget* m_handOver = nullptr;
    QLabel* m_handTo = nullptr;
    QPushButton* m_iAm = nullptr;
    QWidget* m_reading = nullptr;
    std::vector<QPushButton*> m_takeBack; // on each page that has one
    QLabel* m_takenBack = nullptr;
    QLabel* m_left = nullptr;
    QPushButton* m_goOn = nullptr;
    ChoiceBox* m_gauge = nullptr;
    LeafRow* m_leaves = nullptr;
    QLabel* m_refused = nullptr;
    QLabel* m_result = nullptr;
    QGridLayout* m_table = nullptr;
    QLabel* m_meaning = nullptr;
};

} // namespace rig
