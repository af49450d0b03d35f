#pragma once

#include "app/pages/setup/setup_panel.h"

class QLabel;
class QPushButton;

namespace rig {

class GaugeCheckForm;
class GaugeForm;
class RowList;

// Leaf sets, pins and taper gauges of the whole file, with their checks.
class GaugesPanel : public SetUpPanel
{
    Q_OBJECT

public:
    explicit GaugesPanel(SetUpPresenter& presenter, QWidget* parent = nullptr);

    void display(const SetUpView& view) override;
    void setLook(const Look& look) override;
    bool hasUnsaved() const override;
    void focusFirst() override;

private:
    enum class Shown { List, Gauge, Check };

    QWidget* makeList();
    void show(Shown what);
    void showRows();
    void showChecks();
    const GaugeRow* chosen() const;
    void open(std::optional<GaugeId> gauge, const GaugeEntry& entry);
    void openChosen();
    void openCheck();
    void showDoubt();
    void saveGauge();
    void saveCheck();
    void changeUse();

    std::vector<GaugeRow> m_gauges;
    Day m_today;
    Shown m_shown = Shown::List;
    std::optional<GaugeId> m_edited; // in the gauge's form; empty: a new one
    GaugeId m_checked;               // in the check's form
    GaugeEntry m_saved;
    GaugeCheckEntry m_freshCheck;
    std::optional<QuarantineOutlook> m_outlook; // of that gauge, once it is said to be in doubt

    QWidget* m_list = nullptr;
    QLabel* m_none = nullptr;
    RowList* m_rows = nullptr;
    QPushButton* m_usual = nullptr;
    std::vector<QPushButton*> m_forChosen; // need a gauge
    QPushButton* m_use = nullptr;
    QLabel* m_checksTitle = nullptr;
    QLabel* m_checks = nullptr;
    GaugeForm* m_form = nullptr;
    GaugeCheckForm* m_check = nullptr;
};

} // namespace rig
