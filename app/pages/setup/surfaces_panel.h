#pragma once

#include "app/pages/setup/setup_panel.h"

#include <map>

class QLabel;
class QPushButton;

namespace rig {

class Prompts;
class RowList;
class SurfaceForm;

// The surfaces in the order of the control check, and one of them.
class SurfacesPanel : public SetUpPanel
{
    Q_OBJECT

public:
    SurfacesPanel(SetUpPresenter& presenter, Prompts& prompts, QWidget* parent = nullptr);

    void display(const SetUpView& view) override;
    void setLook(const Look& look) override;
    bool hasUnsaved() const override;
    void focusFirst() override;

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    // A form left open while another airframe was looked at.
    struct OpenForm
    {
        std::optional<SurfaceId> surface;
        SurfaceEntry typed;
    };

    QWidget* makeList();
    void showForm(bool open);
    void showRows();
    const Surface* chosen() const;
    void choose(SurfaceId surface);
    void open(std::optional<SurfaceId> surface, const std::optional<SurfaceEntry>& typed);
    void openChosen();
    void save();
    void addUsual();
    void move(int by);
    void changeUse();

    Prompts& m_prompts;
    std::optional<AirframeId> m_airframe;
    std::vector<Surface> m_surfaces;
    bool m_formOpen = false;
    std::optional<SurfaceId> m_edited; // in the form; empty: a new one
    SurfaceEntry m_saved;
    std::map<AirframeId, OpenForm> m_open;

    QWidget* m_list = nullptr;
    QLabel* m_none = nullptr;
    QLabel* m_status = nullptr;
    RowList* m_rows = nullptr;
    QPushButton* m_usual = nullptr;
    std::vector<QPushButton*> m_forChosen; // need a surface
    QPushButton* m_use = nullptr;
    SurfaceForm* m_form = nullptr;
};

} // namespace rig
