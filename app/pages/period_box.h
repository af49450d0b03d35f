#pragma once

#include "core/review/review_period.h"

#include <QWidget>

#include <map>
#include <vector>

class QComboBox;
class QLabel;
class QLineEdit;

namespace rig {

class DayEdit;

// Which period is looked back on: by annual, by season, by fitting of the coupling in view, the last
// riggings, as many as are wanted, or from one day to another. Shows what it is given and says what was
// chosen.
class PeriodBox : public QWidget
{
    Q_OBJECT

public:
    // The name is that of its list; its other parts are the same wherever it stands.
    explicit PeriodBox(const char* listName, QWidget* parent = nullptr);

    void display(const std::vector<PeriodOffer>& offers, const PeriodOffer& chosen,
                 const std::map<CouplingId, QString>& names);
    // The one whose fittings are offered.
    void showCoupling(CouplingId coupling);
    void open();

signals:
    void periodChosen(const rig::PeriodOffer& offer);
    void left(); // it was chosen, and nobody has gone elsewhere since

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    QWidget* makeDays();
    QWidget* makeCount();
    void fill();
    void take(int index);
    void askDays();
    void askCount();
    void fillDays(); // with those of the period that is shown
    void takeDays();
    void takeCount();
    bool isOffered(const PeriodOffer& offer) const;
    void putAway();
    void choose(const PeriodOffer& offer);
    void refuse(QLineEdit* line, const QString& sentence);
    QString nameOf(const PeriodOffer& offer) const;

    std::vector<PeriodOffer> m_offers;
    std::vector<PeriodOffer> m_listed; // as they stand in the list
    PeriodOffer m_chosen;
    std::map<CouplingId, QString> m_names;
    CouplingId m_coupling;
    Day m_today{};

    QComboBox* m_list = nullptr;
    QWidget* m_days = nullptr;
    DayEdit* m_from = nullptr;
    DayEdit* m_to = nullptr;
    QWidget* m_count = nullptr;
    QLineEdit* m_riggings = nullptr;
    QLabel* m_problem = nullptr;
};

} // namespace rig
