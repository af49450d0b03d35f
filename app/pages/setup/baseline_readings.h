#pragma once

#include "core/review/baseline_sheet.h"

#include <QFrame>

#include <optional>
#include <vector>

class QKeyEvent;
class QLabel;
class QPushButton;
class QTableWidget;

namespace rig {

class ChoiceBox;

// Every reading of a baseline or a demonstration, those that no longer count among them, and what may be done
// to one.
class BaselineReadings : public QFrame
{
    Q_OBJECT

public:
    enum class Kind { Baseline, Demonstration };

    explicit BaselineReadings(Kind kind, QWidget* parent = nullptr);

    void display(const std::vector<BaselineReadingRow>& rows, const std::vector<Person>& persons, bool frozen,
                 Day today);
    // The keys of its buttons: with the reading chosen in the list, else with the last that may be changed.
    bool takeKey(QKeyEvent* event);
    // Why what was asked cannot be done.
    void say(const QString& sentence);
    QTableWidget* table() const { return m_table; }

signals:
    void correctionAsked(rig::BaselineReadingRow row);
    // Why what was asked cannot be done, and what comes before it: the button of the key that asked may be
    // far from where one looks.
    void lackSaid(QWidget* lack, QWidget* next);
    void exclusionAsked(rig::BaselineReadingRow row, rig::PersonId by);

protected:
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void askCorrection();
    void askExclusion();
    void buildTable();
    void fill(int line, const BaselineReadingRow& row);
    QString stateOf(const BaselineReadingRow& row) const;
    const BaselineReadingRow* chosenRow();
    void sayLack(const QString& sentence, QWidget* next);
    void fitRows();

    Kind m_kind;
    std::vector<BaselineReadingRow> m_rows;
    Day m_today;
    QTableWidget* m_table = nullptr;
    QPushButton* m_correct = nullptr;
    QPushButton* m_exclude = nullptr;
    ChoiceBox* m_by = nullptr;
    QLabel* m_note = nullptr;
};

} // namespace rig
