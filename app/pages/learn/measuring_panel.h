#pragma once

#include "app/pages/learn/measuring_presenter.h"
#include "app/theme/theme.h"

#include <QWidget>

class QCheckBox;
class QKeyEvent;
class QLabel;
class QPushButton;

namespace rig {

class ChoiceBox;
class LeafRow;

// Reading one joint again and again without looking at what was read before; own figures only on asking.
class MeasuringPanel : public QWidget
{
    Q_OBJECT

public:
    explicit MeasuringPanel(QWidget* parent = nullptr);

    void display(const MeasuringView& view, const QString& person, std::optional<CouplingId> coupling);
    void showKept();
    void setLook(const Look& look);
    bool takeKey(QKeyEvent* event);

signals:
    void readingTaken(rig::PersonId person, rig::CouplingId coupling, rig::GaugeId gauge,
                      const rig::GaugeReading& reading);
    void takeBackAsked(const rig::PracticeReading& reading, const QString& what);
    void shareAsked(rig::PersonId person, bool isShared);

private:
    void showLeaves();
    void showOwn();
    void showTakenBack();
    QString lineOf(const PracticeReading& reading) const;
    void takeBack();

    MeasuringView m_view;
    QString m_person;
    std::optional<CouplingId> m_coupling;
    bool m_isShowing = false; // own figures, since they were asked for
    QLabel* m_where = nullptr;
    ChoiceBox* m_gauge = nullptr;
    QLabel* m_notice = nullptr;
    LeafRow* m_leaves = nullptr;
    QLabel* m_refused = nullptr;
    QLabel* m_kept = nullptr;
    QPushButton* m_show = nullptr;
    QLabel* m_own = nullptr;
    QWidget* m_take = nullptr;
    ChoiceBox* m_takeWhich = nullptr;
    QLabel* m_takeProblem = nullptr;
    QLabel* m_takenBack = nullptr;
    QLabel* m_private = nullptr;
    QCheckBox* m_share = nullptr;
};

} // namespace rig
