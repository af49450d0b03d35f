#pragma once

#include "app/pages/setup/setup_panel.h"

#include <map>

class QLabel;
class QPushButton;

namespace rig {

class CouplingForm;
class FittingForm;
class Prompts;
class RowList;
class UsualCouplingsForm;

// The couplings in rigging order; one of them, its fittings, or the usual ones to start from.
class CouplingsPanel : public SetUpPanel
{
    Q_OBJECT

public:
    CouplingsPanel(SetUpPresenter& presenter, Prompts& prompts, QWidget* parent = nullptr);

    void display(const SetUpView& view) override;
    void setLook(const Look& look) override;
    bool hasUnsaved() const override;
    void focusFirst() override;

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    enum class Shown { List, Coupling, Fitting, Usual };

    // A form left open while another airframe was looked at.
    struct OpenForm
    {
        std::optional<CouplingId> coupling;
        CouplingEntry typed;
    };

    QWidget* makeList();
    void show(Shown what);
    void showRows();
    const CouplingRow* chosen() const;
    void open(std::optional<CouplingId> coupling, const std::optional<CouplingEntry>& typed);
    void openChosen();
    void openFitting();
    void openUsual();
    void saveCoupling();
    void saveFitting();
    void addUsual();
    void move(int by);
    void changeUse();

    Prompts& m_prompts;
    std::optional<AirframeId> m_airframe;
    std::vector<CouplingRow> m_couplings;
    Day m_today;
    Shown m_shown = Shown::List;
    std::optional<CouplingId> m_edited; // in the coupling form; empty: a new one
    CouplingId m_refitted;              // in the fitting form
    CouplingEntry m_saved;
    std::map<AirframeId, OpenForm> m_open;

    QWidget* m_list = nullptr;
    QLabel* m_none = nullptr;
    RowList* m_rows = nullptr;
    QPushButton* m_usual = nullptr;
    QPushButton* m_add = nullptr;
    std::vector<QPushButton*> m_forChosen; // need a coupling
    QPushButton* m_use = nullptr;
    CouplingForm* m_form = nullptr;
    FittingForm* m_fitting = nullptr;
    UsualCouplingsForm* m_usualForm = nullptr;
};

} // namespace rig
